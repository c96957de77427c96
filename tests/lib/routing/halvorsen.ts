import type { SpareWheel } from '../../../lib/blanks/spare-wheel.ts';
import { printFigure } from '../../../lib/figure/print-value.ts';
import type { Bore, Gear } from '../../../lib/gears/gear.ts';
import { systemByKey } from '../../../lib/gears/systems.ts';
import type { WantedPart } from '../../../lib/routing/asked.ts';
import type { PlannedOperation } from '../../../lib/routing/operation.ts';
import type { ShopNow } from '../../../lib/routing/shop-now.ts';
import type { Arbor, Cutter, Head, Machine, Mandrel } from '../../../lib/tooling/tooling.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { THREE_PLATES } from '../dividing/plates.ts';

/** The Halvorsen H-12's shop of story 1: 8 DP, 14½°, six splines of 1.250; a No. 4 cutter, no No. 5 and no spline mandrel. */
const system = systemByKey('full-14.5')?.system;
if (!system) throw new Error('no system');

export const SPLINE: Bore = { form: 'splined', diameter: inches(1.25), minor: inches(1.0625), splines: 6, keyWidth: inches(0.3125) };
export const gear = (teeth: number, more: Partial<Gear> = {}): Gear => ({
  teeth,
  pitch: { kind: 'DP', size: ratio(8) },
  system,
  helix: null,
  face: inches(0.875),
  bore: SPLINE,
  body: { known: true, recesses: [], openings: [] },
  ...more,
});

export const spare = (teeth: number, more: Partial<SpareWheel> = {}): SpareWheel => ({
  id: teeth,
  name: `${teeth} teeth`,
  gear: gear(teeth),
  reading: null,
  runOut: null,
  trust: 'unknown',
  condition: { teeth: 'worn', bore: 'good' },
  material: 'steel',
  hardness: 'file bites',
  caseDepth: null,
  ...more,
});

export const wanted = (teeth: number, more: Partial<WantedPart> = {}): WantedPart => ({
  name: `Change gear ${teeth}`,
  mark: `H12-${teeth}T`,
  gear: gear(teeth),
  ...more,
});

export const cutter = (id: number, number: string, teethFrom: number, teethTo: number | null, more: Partial<Cutter> = {}): Cutter => ({
  kind: 'cutter',
  id,
  name: `8 DP No. ${number}`,
  here: true,
  pitch: { kind: 'DP', size: ratio(8) },
  angle: degrees(14.5),
  number,
  teethFrom,
  teethTo,
  hole: inches(1),
  diameter: inches(3),
  width: inches(0.3),
  stampedDepth: null,
  steel: 'high-speed',
  exactFor: null,
  sharp: true,
  ...more,
});

export const head: Head = { id: 11, name: 'Dividing head', here: true, kind: 'head', turns: 40, backPin: false };
export const arbor: Arbor = { id: 12, name: '1 in arbor', here: true, kind: 'arbor', diameter: inches(1) };
export const mandrel: Mandrel = { id: 13, name: 'Spline mandrel', here: true, kind: 'mandrel', bore: SPLINE, holding: 'nut', runOut: null };

const dial = (reads: 'travel' | 'diameter') => ({ reads, unit: 'in' as const, division: inches(0.001), perTurn: 100 });
export const lathe: Machine = {
  id: 1,
  name: 'Lathe',
  kind: 'lathe',
  speedsRpm: [28, 45, 70, 110, 180, 290],
  feeds: [inches(0.002), inches(0.004), inches(0.008)],
  feedsPer: 'turn',
  crossDial: dial('travel'),
  depthDial: null,
  screwedNose: true,
};
export const mill: Machine = {
  ...lathe,
  id: 2,
  name: 'Horizontal mill',
  kind: 'mill',
  feeds: [],
  speedsRpm: [40, 63, 100],
  depthDial: dial('travel'),
};

export const shop = (more: Partial<ShopNow> = {}): ShopNow => ({
  cutters: [cutter(4, '4', 26, 34)],
  plates: THREE_PLATES,
  heads: [head],
  mandrels: [],
  arbors: [arbor],
  chucks: [],
  others: [],
  lathe,
  mill,
  convention: 'low end',
  cleanUp: inches(0.01),
  paper: inches(0),
  unit: null,
  ...more,
});

/** One operation of a plan. */
export function at(operations: readonly PlannedOperation[], key: string): PlannedOperation {
  const found = operations.find((one) => one.key === key);
  if (!found) throw new Error(`no operation ${key}: ${operations.map((one) => one.key).join(', ')}`);
  return found;
}

/** A figure as it is printed, without its unit. */
export function printed(operations: readonly PlannedOperation[], operation: string, figure: string): string {
  const found = at(operations, operation).figures[figure];
  if (!found) throw new Error(`no figure ${operation}/${figure}: ${Object.keys(at(operations, operation).figures).join(', ')}`);
  return printFigure(found).text;
}
