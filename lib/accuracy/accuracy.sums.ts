import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Figure, Given } from '../figure/figure.ts';
import { numberGiven, told } from '../figure/told.ts';
import { type Tooth, unitOfPitch } from '../gears/tooth.ts';
import { checkedTooth, type Wheel } from '../gears/wheel.ts';
import { type Length, millimetres, toMm } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import { classOf, cumulativePitch, type Measured, runOut, singlePitch, totalHelix, totalProfile } from './iso1328.formulas.ts';

/** Readings of a finished wheel, each null when it was not taken. runOut: full indicator reading of a pin in the spaces against the bore. */
export type AccuracyAsked = Wheel & {
  readonly face: Length;
  readonly runOut: Length | null;
  readonly singlePitch: Length | null;
  readonly cumulativePitch: Length | null;
  readonly lead: Length | null;
};

export type AccuracyKey = 'class' | 'runOutLimit' | 'singlePitchLimit' | 'cumulativeLimit' | 'profileLimit' | 'leadLimit';

const SOURCE = 'ISO 1328-1:2013, section 5.3: formulas from memory';
const USUAL_CLASS = 9;

type Kind = {
  readonly name: string;
  readonly tolerance: (one: Measured, grade: number) => number;
  readonly reading: (asked: AccuracyAsked) => Length | null;
};
const KINDS: readonly Kind[] = [
  { name: 'Run-out of the teeth', tolerance: runOut, reading: (asked) => asked.runOut },
  { name: 'Single pitch', tolerance: singlePitch, reading: (asked) => asked.singlePitch },
  { name: 'Cumulative pitch', tolerance: cumulativePitch, reading: (asked) => asked.cumulativePitch },
  { name: 'Profile, total', tolerance: totalProfile, reading: () => null },
  { name: 'Lead, total', tolerance: totalHelix, reading: (asked) => asked.lead },
];

/** The standard's own limits: 5 to 1000 teeth, 5 to 15000 mm, module 0.5 to 70, face 4 to 1200 mm. */
function measured({ face }: AccuracyAsked, tooth: Tooth): Measured {
  const mn = tooth.unit === 'mm' ? tooth.m : tooth.m * 25.4;
  const one = { mn, d: tooth.N * mn, b: toMm(face) };
  const within = one.d >= 5 && one.d <= 15_000 && mn >= 0.5 && mn <= 70 && one.b >= 4 && one.b <= 1200 && tooth.N >= 5 && tooth.N <= 1000;
  if (within) return one;
  throw new DomainError({
    given: `${tooth.N} teeth, ${printShort(one.d, 2)} mm across the pitch circle, module ${printShort(mn, 3)}, face ${printShort(one.b, 2)} mm.`,
    limit: 'The standard speaks of 5 to 1000 teeth, 5 to 15,000 mm, module 0.5 to 70 and faces from 4 to 1200 mm.',
    tryThis: 'Judge so small a wheel by how it runs with its mate.',
    about: ['teeth', 'pitch', 'face'],
  });
}

const micrometres = (um: number): Length => millimetres(um / 1000);

function classTable(asked: AccuracyAsked, one: Measured): AnswerTable {
  const rows = KINDS.map(({ name, tolerance, reading }) => {
    const read = reading(asked);
    const found = read === null ? null : classOf(toMm(read) * 1000, (grade) => tolerance(one, grade));
    const verdict = read === null ? 'not read' : found === null ? 'beyond 11' : `${found}`;
    return [
      name,
      read === null ? '—' : { length: read },
      verdict,
      ...[7, 9, 11].map((grade) => ({ length: micrometres(tolerance(one, grade)) })),
    ];
  });
  return {
    title: 'By classes of tolerance',
    unit: unitOfPitch(asked.pitch),
    heads: ['What', 'Read', 'Class', 'Class 7', 'Class 9', 'Class 11'],
    rows,
  };
}

function worst(asked: AccuracyAsked, one: Measured): string {
  const read = KINDS.flatMap(({ tolerance, reading }) => {
    const length = reading(asked);
    return length === null ? [] : [classOf(toMm(length) * 1000, (grade) => tolerance(one, grade))];
  });
  if (read.length === 0) return 'nothing was read';
  return read.some((grade) => grade === null) ? 'beyond class 11' : `class ${Math.max(...read.map(Number))}`;
}

/**
 * Which tolerance class a finished wheel keeps, for comparison with what was measured; nothing in a shop's work depends on it.
 * Throws DomainError outside the standard's range. Example: 40 teeth module 3, face 30, run-out 0.05 mm: class 8.
 */
export function accuracyAnswer(asked: AccuracyAsked): Answer<AccuracyKey> {
  const tooth = checkedTooth(asked);
  const one = measured(asked, tooth);
  const unit = unitOfPitch(asked.pitch);
  const [d, m, b, q]: readonly Given[] = [
    numberGiven('d', 'pitch diameter, mm', one.d, 6, 'worked out'),
    numberGiven('m', 'module, mm', one.mn, 6, 'worked out'),
    numberGiven('b', 'face, mm', one.b, 6),
    numberGiven('q', 'class', USUAL_CLASS, 0, 'guess'),
  ] as const;
  const figure = (name: string, symbol: string, formula: string, um: number, given: readonly (Given | undefined)[]): Figure =>
    told(
      unit,
      { name: `${name}, class ${USUAL_CLASS}`, symbol, formula: `(${formula}) × √(2)^(q − 5)`, source: SOURCE },
      { number: um, unit: 'µm', places: 1 },
      [...given.flatMap((each) => (each ? [each] : [])), ...(q ? [q] : [])],
    );
  const at = (tolerance: Kind['tolerance']): number => tolerance(one, USUAL_CLASS);
  return {
    figures: {
      class: told(unit, { name: 'What was read keeps', symbol: '', formula: '', source: SOURCE }, { words: worst(asked, one) }),
      runOutLimit: figure('Run-out', 'Fr', '0.9 × (0.002 × d + 0.55 × √(d) + 0.7 × m + 12)', at(runOut), [d, m]),
      singlePitchLimit: figure('Single pitch', 'fp', '0.001 × d + 0.4 × m + 5', at(singlePitch), [d, m]),
      cumulativeLimit: figure('Cumulative pitch', 'Fp', '0.002 × d + 0.55 × √(d) + 0.7 × m + 12', at(cumulativePitch), [d, m]),
      profileLimit: figure('Profile', 'Fa', '√((0.4 × m + 0.001 × d + 4)^2 + (0.55 × m + 5)^2)', at(totalProfile), [d, m]),
      leadLimit: figure('Lead', 'Fb', '√((0.05 × √(d) + 0.35 × √(b) + 4)^2 + (0.07 × √(d) + 0.45 × √(b) + 4)^2)', at(totalHelix), [d, b]),
    },
    cautions: [
      {
        name: 'For comparison',
        says: 'A milled change gear that runs quietly at its centre distance is right, whatever its class.',
        weight: 'note',
      },
      {
        name: 'Which edition',
        says: 'Limits of the edition of 2013, worked for this very wheel and not rounded. The edition of 1995 goes by bands of size and rounds to whole micrometres above 10 µm: its printed limits differ by a few.',
        weight: 'note',
      },
    ],
    tables: [classTable(asked, one)],
  };
}
