import { boreCheck } from '../blanks/bore-check.ts';
import { angleWords, holeWords } from '../cutters/describe.ts';
import { cutterMeets } from '../cutters/meets.ts';
import { wholeNumberFor } from '../cutters/ranges.ts';
import type { Bore } from '../gears/gear.ts';
import { printPitch } from '../gears/pitch.ts';
import type { AnyTool, Plate } from '../tooling/tooling.ts';
import { printLength, printShort } from '../values/print.ts';
import { calledBy } from './key-words.ts';
import type { Need } from './operation.ts';

const hasCircle = ({ sides }: Plate, holes: number): boolean => sides.some((side) => side.includes(holes));

const sameName = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

/** A mandrel fits a bore of its own form and size; a plain one also a keyed bore of its size, and is then driven by its nut. */
function mandrelFits(mandrel: Bore, bore: Bore): boolean {
  const asHeld: Bore = bore.form === 'keyed' && mandrel.form === 'plain' ? { form: 'plain', diameter: bore.diameter } : bore;
  const { check, work } = boreCheck(asHeld, mandrel, 'in');
  return check.result === 'yes' && work === 'none';
}

/** Whether a tool meets a need today: it is here, and it fits. A blunt cutter meets none. A tool of no kind is known by the words in its name. */
export function meets(tool: AnyTool, need: Need): boolean {
  if (!tool.here) return false;
  if (need.kind === 'cutter') return tool.kind === 'cutter' && cutterMeets(tool, need);
  if (need.kind === 'mandrel') return tool.kind === 'mandrel' && mandrelFits(tool.bore, need.bore);
  if (need.kind === 'head') return tool.kind === 'head' && tool.turns === need.turns;
  if (need.kind === 'circle') return tool.kind === 'plate' && hasCircle(tool, need.holes);
  if (need.kind === 'arbor') return tool.kind === 'arbor' && tool.diameter === need.diameter;
  if (need.kind === 'chuck') return tool.kind === 'chuck' && tool.jaws === need.jaws;
  return tool.kind === 'other' && (sameName(tool.name, need.name) || calledBy(tool.name, need.name));
}

export const toolsFor = (need: Need, tools: readonly AnyTool[]): AnyTool[] => tools.filter((tool) => meets(tool, need));

/** A bore in words: "6-spline bore of 1.2500 in". */
export function boreWords(bore: Bore): string {
  const size = `${printLength(bore.diameter, { unit: 'in', places: 4 })} in`;
  if (bore.form === 'splined') return `${bore.splines}-spline bore of ${size}`;
  return bore.form === 'keyed' ? `keyed bore of ${size}` : `plain bore of ${size}`;
}

/** A need in the trade's words: "cutter No. 5, 8 DP, 14½°, for 22 teeth". */
export function needWords(need: Need): string {
  if (need.kind === 'cutter') {
    const number = wholeNumberFor(need.teeth)?.number;
    const sort = `${printPitch(need.pitch)}, ${angleWords(need.angle)}, for ${printShort(need.teeth, 2)} teeth`;
    return number ? `cutter No. ${number}, ${sort}` : `cutter ${sort}`;
  }
  if (need.kind === 'mandrel') return `mandrel for a ${boreWords(need.bore)}`;
  if (need.kind === 'head') return `dividing head of ${need.turns} to 1`;
  if (need.kind === 'circle') return `index plate with a circle of ${need.holes}`;
  if (need.kind === 'arbor') return `cutter arbor of ${holeWords(need.diameter)}`;
  if (need.kind === 'chuck') return `${need.jaws}-jaw chuck`;
  return need.name;
}
