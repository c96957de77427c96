import type { Caution } from '../figure/figure.ts';
import { printPitch } from '../gears/pitch.ts';
import { toothOf, unitOfPitch, wholeDepth } from '../gears/tooth.ts';
import type { Cutter } from '../tooling/tooling.ts';
import { toDegrees } from '../values/angle.ts';
import { inches, ofUnit, toInches } from '../values/length.ts';
import { printLength } from '../values/print.ts';
import type { Candidate, GearToCut, Wanted } from './choice.ts';
import { errorWords } from './describe.ts';
import { addendumOf, formErrorsOf, pairOf } from './form-errors.ts';
import { CONVENTIONS, exactCountOf } from './ranges.ts';
import { substituteSpans } from './substitute-span.formulas.ts';
import { STAMP_APART_INCHES } from './verdict.data.ts';

type Asked = {
  readonly gear: GearToCut;
  readonly right: Candidate | null;
  readonly second: readonly Candidate[];
  readonly wanted: Wanted | null;
};

function stampApart(cutter: Cutter, gear: GearToCut): Caution[] {
  if (cutter.stampedDepth === null) return [];
  const unit = unitOfPitch(gear.pitch);
  const system = ofUnit(wholeDepth(toothOf(gear)), unit);
  if (Math.abs(toInches(cutter.stampedDepth) - toInches(system)) <= STAMP_APART_INCHES) return [];
  const places = unit === 'in' ? 4 : 3;
  const [stamp, own] = [printLength(cutter.stampedDepth, { unit, places }), printLength(system, { unit, places })];
  return [
    { name: 'stamped depth', says: `${cutter.name} is stamped ${stamp}, ${gear.system.name} says ${own}: settle which.`, weight: 'beware' },
  ];
}

/** What the two opinions on the exact count make of one cutter, unless its count is typed in or both say the same. */
function sourcesDiffer({ cutter, error }: Candidate, gear: GearToCut): Caution[] {
  if (error.exact.from === 'typed' || cutter.teethFrom === null) return [];
  const range = { from: cutter.teethFrom, to: cutter.teethTo };
  const forms = CONVENTIONS.map((convention) => exactCountOf(range, convention));
  if (forms[0]?.count === forms[1]?.count) return [];
  const unit = unitOfPitch(gear.pitch);
  const each = forms.map((exact) => {
    const form = formErrorsOf(gear, { pitch: gear.pitch, angle: gear.system.angle, exact });
    return `${exact.count} (${exact.from}): tips ${form ? errorWords(form.tip, unit) : 'not drawn'}`;
  });
  return [
    {
      name: 'exact count',
      says: `Sources differ on the count that ${cutter.name} is right for. ${each.join('; ')}.`,
      weight: 'note',
      about: 'formErrorTip',
    },
  ];
}

/** A substitute form spoils some spans more than others: names the count to measure over, and what one tooth more would read. */
function safestSpan({ cutter, error }: Candidate, gear: GearToCut): Caution[] {
  if (gear.helix) return [];
  const unit = unitOfPitch(gear.pitch);
  const pair = pairOf(gear, { pitch: gear.pitch, angle: gear.system.angle, exact: error.exact });
  const spans = substituteSpans(pair, { A: addendumOf(gear), B: toothOf(gear).B });
  const [safest] = [...spans].sort((a, b) => Math.abs(a.error) - Math.abs(b.error));
  const more = spans.find(({ k }) => k === (safest?.k ?? 0) + 1);
  if (!safest || !more) return [];
  const says = `With ${cutter.name} measure over ${safest.k}: at the right depth the span over ${more.k} reads ${errorWords(ofUnit(more.error, unit), unit)} off.`;
  return [{ name: 'span', says, weight: 'beware' }];
}

const numbersDiffer: Caution = {
  name: 'number sets',
  says: 'Number sets differ by maker, and some number their modules the other way round: go by the tooth range on the cutter.',
  weight: 'note',
  about: 'cutter',
};

const trueInvolutes: Caution = {
  name: 'old forms',
  says: 'Both forms are taken as true involutes. Old 14½° cutters are involute only about the pitch line.',
  weight: 'note',
  about: 'formErrorTip',
};

const noArbor = ({ cutter, arbor }: Candidate): Caution[] =>
  arbor.says === ''
    ? []
    : [{ name: 'arbor', says: `${cutter.name}: ${arbor.says}`, weight: arbor.wants ? 'beware' : 'note', about: 'cutter' }];

const doublePitch = (gear: GearToCut): Caution[] =>
  gear.system.addendum === 1
    ? []
    : [
        {
          name: 'short teeth',
          says: `${gear.system.name}: a full-depth ${printPitch(gear.pitch)} cutter cuts its flank, not its depth. See that the cutter is made for it.`,
          weight: 'beware',
          about: 'cutter',
        },
      ];

/** What to beware of with the cutter that would be used: the right one, else the best second choice. */
export function cautionsOn({ gear, right, second, wanted }: Asked): readonly Caution[] {
  const used = right ?? second[0];
  const off = used && inches(0) !== used.error.tip ? used : null;
  return [
    ...(used ? noArbor(used) : []),
    ...(used ? stampApart(used.cutter, gear) : []),
    ...(used && !right ? safestSpan(used, gear) : []),
    ...doublePitch(gear),
    ...(used ? sourcesDiffer(used, gear) : []),
    ...(wanted ? [numbersDiffer] : []),
    ...(off && toDegrees(gear.system.angle) === 14.5 ? [trueInvolutes] : []),
  ];
}
