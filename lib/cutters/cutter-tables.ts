import type { AnswerTable, Value } from '../figure/figure.ts';
import { toothOf, unitOfPitch } from '../gears/tooth.ts';
import { type Length, ofUnit } from '../values/length.ts';
import type { Candidate, CutterChoice, CutterQuestion, FormErrors, Refused } from './choice.ts';
import { rangeWords } from './describe.ts';
import { addendumOf, formErrorsOf, pairOf, virtualCount } from './form-errors.ts';
import { WHOLE_NUMBERS } from './ranges.data.ts';
import { exactCountOf, inRange } from './ranges.ts';
import { substituteSpans } from './substitute-span.formulas.ts';

type Cell = Value | string;

const orNone = (length: Length | null): Cell => (length === null ? 'no form there' : { length });

function errorCells(error: FormErrors | null): readonly Cell[] {
  if (!error) return ['unknown', 'unknown', 'unknown', 'unknown', 'unknown'];
  return [{ count: error.exact.count }, { length: error.tip }, { length: error.half }, { length: error.pitchLine }, orNone(error.square)];
}

const ruling = (one: Candidate | Refused): string => ('verdict' in one ? one.says : `Refused. ${one.says}`);

/** Every cutter in the drawer: right, second choices, refused; each with its errors and its verdict. */
export function candidatesTable({ right, second, refused }: CutterChoice, { gear }: CutterQuestion): AnswerTable {
  const all = [...(right ? [right] : []), ...second, ...refused];
  return {
    title: 'Cutters in the drawer',
    unit: unitOfPitch(gear.pitch),
    heads: ['Cutter', 'Form right for', 'At the tips', 'Half way to pitch line', 'At pitch line', 'Square at tip corner', 'Verdict'],
    rows: all.map((one) => [one.cutter.name, ...errorCells(one.error), ruling(one)]),
  };
}

/** What to do, best first. */
export function adviceTable({ advice }: CutterChoice, { gear }: CutterQuestion): AnswerTable {
  return {
    title: 'What to do, best first',
    unit: unitOfPitch(gear.pitch),
    heads: ['What', 'At the tips', 'In words'],
    rows: advice.map((line) => [line.do, { length: line.tip }, line.says]),
  };
}

/** With a substitute: how far off each span reads at the right depth. Empty for a right cutter, and for helical teeth. */
export function spansTable({ right, second }: CutterChoice, { gear }: CutterQuestion): AnswerTable {
  const [unit, used] = [unitOfPitch(gear.pitch), second[0]];
  const heads = ['Span over', 'Reads off by'];
  const title = `Spans with ${used?.cutter.name ?? 'a substitute'}, at the right depth`;
  if (right || !used || gear.helix) return { title, unit, heads, rows: [] };
  const pair = pairOf(gear, { pitch: gear.pitch, angle: gear.system.angle, exact: used.error.exact });
  const spans = substituteSpans(pair, { A: addendumOf(gear), B: toothOf(gear).B });
  return { title, unit, heads, rows: spans.map(({ k, error }) => [{ count: k, unit: 'teeth' }, { length: ofUnit(error, unit) }]) };
}

/** What the two opinions make of the number for this gear and of its neighbours. */
export function conventionsTable({ gear }: CutterQuestion): AnswerTable {
  const place = WHOLE_NUMBERS.findIndex((one) => inRange(one, virtualCount(gear)));
  const near = place < 0 ? WHOLE_NUMBERS.slice(-1) : WHOLE_NUMBERS.slice(Math.max(0, place - 1), place + 2);
  const tip = (count: number): Cell =>
    orNone(formErrorsOf(gear, { pitch: gear.pitch, angle: gear.system.angle, exact: { count, from: 'low end' } })?.tip ?? null);
  return {
    title: 'Sources differ on the count that a number is right for',
    unit: unitOfPitch(gear.pitch),
    heads: ['No.', 'Range', 'Low end (trade, from memory)', 'Tips then', "Rose's treatise", 'Tips then'],
    rows: near.map((one) => {
      const [low, treatise] = [exactCountOf(one, 'low end').count, exactCountOf(one, 'treatise').count];
      return [one.number, rangeWords(one.from, one.to), { count: low }, tip(low), { count: treatise }, tip(treatise)];
    }),
  };
}
