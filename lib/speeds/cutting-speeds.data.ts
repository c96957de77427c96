import type { Material } from '../gears/gear.ts';
import type { CutterSteel } from '../tooling/tooling.ts';

/** The cuts that the table holds. Turning over gaps and form cutters are worked from these two (cuts.data.ts). */
export type TableCut = 'turning' | 'milling';

/** One surface speed in feet per minute, with where it was read. */
export type SpeedRow = {
  readonly material: Material;
  readonly steel: Exclude<CutterSteel, 'unknown'>;
  readonly cut: TableCut;
  readonly ftPerMin: number;
  readonly source: string;
};

const LATHE_HSS = 'Woodstock M1099 lathe manual, p. 27, "Cutting speed table for HSS cutting tools"';
const MILL_HSS = 'Grizzly G0619 mill manual, p. 24, "Cutting speeds for high speed steel (HSS) cutting tools"';
const MILL_CARBON = 'Machine Shop Work (American School), "Cutting Speeds, Part 2", table of carbon-steel mills';
const LATHE_JONES = 'Jones, Turning and Boring, 1914, "Average cutting speeds for turning", low end of the range';
const LATHE_JONES_HIGH = 'Jones, Turning and Boring, 1914, "Average cutting speeds for turning", high end of the range';
const DOUBLE = 'Grizzly G0619 mill manual, p. 24: carbide at twice the speed of high-speed steel';
const HALF = 'common practice, no source: carbon steel at half the speed of high-speed steel';
const JUDGEMENT = 'judgement, no source: slow enough for a tool that wears or a metal that softens';
const AS_TOOL_STEEL = 'judgement: an unknown metal is cut like tool steel; the speed is that of tool steel in ';

/** Hard iron wants slower (50 ft/min for high-speed steel in both manuals): the speed here is for soft grey iron. */
export const CUTTING_SPEEDS: readonly SpeedRow[] = [
  { material: 'steel', steel: 'high-speed', cut: 'turning', ftPerMin: 90, source: LATHE_HSS },
  { material: 'steel', steel: 'carbon', cut: 'turning', ftPerMin: 45, source: LATHE_JONES },
  { material: 'steel', steel: 'carbide', cut: 'turning', ftPerMin: 180, source: DOUBLE },
  { material: 'steel', steel: 'high-speed', cut: 'milling', ftPerMin: 90, source: MILL_HSS },
  { material: 'steel', steel: 'carbon', cut: 'milling', ftPerMin: 36, source: MILL_CARBON },
  { material: 'steel', steel: 'carbide', cut: 'milling', ftPerMin: 180, source: DOUBLE },

  { material: 'cast iron', steel: 'high-speed', cut: 'turning', ftPerMin: 80, source: LATHE_HSS },
  { material: 'cast iron', steel: 'carbon', cut: 'turning', ftPerMin: 40, source: LATHE_JONES },
  { material: 'cast iron', steel: 'carbide', cut: 'turning', ftPerMin: 160, source: DOUBLE },
  { material: 'cast iron', steel: 'high-speed', cut: 'milling', ftPerMin: 80, source: MILL_HSS },
  { material: 'cast iron', steel: 'carbon', cut: 'milling', ftPerMin: 60, source: MILL_CARBON },
  { material: 'cast iron', steel: 'carbide', cut: 'milling', ftPerMin: 160, source: DOUBLE },

  { material: 'bronze', steel: 'high-speed', cut: 'turning', ftPerMin: 80, source: LATHE_JONES_HIGH },
  { material: 'bronze', steel: 'carbon', cut: 'turning', ftPerMin: 35, source: LATHE_JONES },
  { material: 'bronze', steel: 'carbide', cut: 'turning', ftPerMin: 160, source: DOUBLE },
  { material: 'bronze', steel: 'high-speed', cut: 'milling', ftPerMin: 150, source: MILL_HSS },
  { material: 'bronze', steel: 'carbon', cut: 'milling', ftPerMin: 80, source: MILL_CARBON },
  { material: 'bronze', steel: 'carbide', cut: 'milling', ftPerMin: 300, source: DOUBLE },

  { material: 'brass', steel: 'high-speed', cut: 'turning', ftPerMin: 150, source: LATHE_HSS },
  { material: 'brass', steel: 'carbon', cut: 'turning', ftPerMin: 75, source: HALF },
  { material: 'brass', steel: 'carbide', cut: 'turning', ftPerMin: 300, source: DOUBLE },
  { material: 'brass', steel: 'high-speed', cut: 'milling', ftPerMin: 150, source: MILL_HSS },
  { material: 'brass', steel: 'carbon', cut: 'milling', ftPerMin: 100, source: MILL_CARBON },
  { material: 'brass', steel: 'carbide', cut: 'milling', ftPerMin: 300, source: DOUBLE },

  { material: 'aluminium', steel: 'high-speed', cut: 'turning', ftPerMin: 300, source: LATHE_HSS },
  { material: 'aluminium', steel: 'carbon', cut: 'turning', ftPerMin: 150, source: HALF },
  { material: 'aluminium', steel: 'carbide', cut: 'turning', ftPerMin: 600, source: DOUBLE },
  { material: 'aluminium', steel: 'high-speed', cut: 'milling', ftPerMin: 300, source: MILL_HSS },
  { material: 'aluminium', steel: 'carbon', cut: 'milling', ftPerMin: 150, source: HALF },
  { material: 'aluminium', steel: 'carbide', cut: 'milling', ftPerMin: 600, source: DOUBLE },

  { material: 'phenolic', steel: 'high-speed', cut: 'turning', ftPerMin: 150, source: JUDGEMENT },
  { material: 'phenolic', steel: 'carbon', cut: 'turning', ftPerMin: 75, source: JUDGEMENT },
  { material: 'phenolic', steel: 'carbide', cut: 'turning', ftPerMin: 300, source: JUDGEMENT },
  { material: 'phenolic', steel: 'high-speed', cut: 'milling', ftPerMin: 150, source: JUDGEMENT },
  { material: 'phenolic', steel: 'carbon', cut: 'milling', ftPerMin: 75, source: JUDGEMENT },
  { material: 'phenolic', steel: 'carbide', cut: 'milling', ftPerMin: 300, source: JUDGEMENT },

  { material: 'zinc', steel: 'high-speed', cut: 'turning', ftPerMin: 150, source: JUDGEMENT },
  { material: 'zinc', steel: 'carbon', cut: 'turning', ftPerMin: 75, source: JUDGEMENT },
  { material: 'zinc', steel: 'carbide', cut: 'turning', ftPerMin: 300, source: JUDGEMENT },
  { material: 'zinc', steel: 'high-speed', cut: 'milling', ftPerMin: 150, source: JUDGEMENT },
  { material: 'zinc', steel: 'carbon', cut: 'milling', ftPerMin: 75, source: JUDGEMENT },
  { material: 'zinc', steel: 'carbide', cut: 'milling', ftPerMin: 300, source: JUDGEMENT },

  { material: 'unknown', steel: 'high-speed', cut: 'turning', ftPerMin: 50, source: `${AS_TOOL_STEEL}${LATHE_HSS}` },
  { material: 'unknown', steel: 'carbon', cut: 'turning', ftPerMin: 25, source: `${AS_TOOL_STEEL}${LATHE_JONES}` },
  { material: 'unknown', steel: 'carbide', cut: 'turning', ftPerMin: 100, source: `${AS_TOOL_STEEL}${DOUBLE}` },
  { material: 'unknown', steel: 'high-speed', cut: 'milling', ftPerMin: 50, source: `${AS_TOOL_STEEL}${MILL_HSS}` },
  { material: 'unknown', steel: 'carbon', cut: 'milling', ftPerMin: 20, source: `${AS_TOOL_STEEL}${MILL_CARBON}` },
  { material: 'unknown', steel: 'carbide', cut: 'milling', ftPerMin: 100, source: `${AS_TOOL_STEEL}${DOUBLE}` },
];
