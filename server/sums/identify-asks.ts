import { HELIX_ERROR_DEG, READING_ERROR_IN } from '../../lib/identify/judgements.data.ts';
import type { MeasuredWheel, Reading } from '../../lib/identify/readings.ts';
import { inches, type LengthUnit } from '../../lib/values/length.ts';
import type { TypedLength } from '../../lib/values/read.ts';
import { angleField, choiceField, countField, optional, TEETH } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { sizeIfKnown } from './asks.ts';
import { otherWheelsField } from './read-other-wheels.ts';

const usual = (of: keyof typeof READING_ERROR_IN): string => `Empty: ${READING_ERROR_IN[of]} in (judgement)`;
const error = (label: string, of: keyof typeof READING_ERROR_IN) => sizeIfKnown({ label, hint: usual(of), least: 0.00001, most: 1 });

export const IDENTIFY_ASKS = {
  teeth: countField({ label: 'Teeth', limits: TEETH, unit: 'teeth' }),
  outside: sizeIfKnown({ label: 'Outside diameter', hint: 'As it is, worn or turned down' }),
  outsideBy: optional(
    choiceField<'jaws' | 'true'>({
      label: 'Outside was taken',
      choices: [
        ['jaws', 'between flat jaws'],
        ['true', 'as a true diameter'],
      ],
    }),
  ),
  k: optional(countField({ label: 'Teeth between the jaws', hint: 'Of the first span', limits: { least: 1, most: 400 } })),
  spanRead: sizeIfKnown({ label: 'Span over so many', hint: 'Least worn place, burrs off' }),
  spanMore: sizeIfKnown({ label: 'Span over one more' }),
  spanMost: sizeIfKnown({ label: 'Span over two more' }),
  rootRead: sizeIfKnown({ label: 'Root diameter' }),
  depthRead: sizeIfKnown({ label: 'Depth of a space', hint: 'From the tip' }),
  wallRead: sizeIfKnown({ label: 'Least wall, bore to root' }),
  wallBore: sizeIfKnown({ label: 'Bore of that wall' }),
  pinUsed: sizeIfKnown({ label: 'Pin' }),
  overPins: sizeIfKnown({ label: 'Over pins', hint: 'In spaces as nearly opposite as can be' }),
  mate: optional(countField({ label: 'Teeth of the mate', limits: { least: 4, most: 1000 } })),
  centres: sizeIfKnown({ label: 'Centre distance with it' }),
  print: optional(angleField({ label: 'Lean of a rolled print', hint: 'From the axis; straight teeth 0', limits: { least: 0, most: 60 } })),
  outsideError: error('Outside reads within', 'outside'),
  spanError: error('Spans read within', 'span'),
  rootError: error('Root, depth and wall read within', 'root'),
  pinsError: error('Pins read within', 'over pins'),
  centresError: error('Centres read within', 'centres'),
  printError: optional(
    angleField({ label: 'Print reads within', hint: `Empty: ${HELIX_ERROR_DEG}° (judgement)`, limits: { least: 0.05, most: 10 } }),
  ),
  others: otherWheelsField({ label: 'What the other wheels read' }),
};

export type Boxes = ValuesOf<typeof IDENTIFY_ASKS>;

const within = (error: TypedLength | null) => (error ? { error: error.length } : {});

function spansOf({ k, spanRead, spanMore, spanMost, spanError }: Boxes): Reading[] {
  return [spanRead, spanMore, spanMost].flatMap((span, i) =>
    span ? [{ of: 'span', over: (k ?? 0) + i, size: span.length, ...within(spanError) } as const] : [],
  );
}

function rootsOf({ rootRead, depthRead, wallRead, wallBore, rootError }: Boxes): Reading[] {
  return [
    ...(rootRead ? [{ of: 'root', size: rootRead.length, ...within(rootError) } as const] : []),
    ...(depthRead ? [{ of: 'depth', size: depthRead.length, ...within(rootError) } as const] : []),
    ...(wallRead ? [{ of: 'wall', size: wallRead.length, bore: wallBore?.length ?? inches(0), ...within(rootError) } as const] : []),
  ];
}

/** The boxes as the first wheel's readings; a box that hangs on another (pin, mate, bore) counts only with it. */
function readingsOf(boxes: Boxes): Reading[] {
  const { outside, outsideBy, outsideError, pinUsed, overPins, pinsError, mate, centres, centresError, print, printError } = boxes;
  return [
    ...(outside ? [{ of: 'outside', by: outsideBy ?? 'jaws', size: outside.length, ...within(outsideError) } as const] : []),
    ...rootsOf(boxes),
    ...spansOf(boxes),
    ...(overPins
      ? [{ of: 'over pins', pin: pinUsed?.length ?? overPins.length, size: overPins.length, ...within(pinsError) } as const]
      : []),
    ...(centres ? [{ of: 'centres', mate: mate ?? 0, size: centres.length, ...within(centresError) } as const] : []),
    ...(print !== null ? [{ of: 'helix', angle: print, ...(printError !== null ? { error: printError } : {}) } as const] : []),
  ];
}

/** The unit of the first size that was typed. */
export const unitOf = ({ outside, spanRead, rootRead, depthRead, overPins, centres }: Boxes): LengthUnit =>
  [outside, spanRead, rootRead, depthRead, overPins, centres].find((one) => one !== null)?.form.unit ?? 'in';

/** All wheels that were asked about, the one in question first. */
export const wheelsOf = (boxes: Boxes): readonly MeasuredWheel[] => [
  { teeth: boxes.teeth, readings: readingsOf(boxes) },
  ...(boxes.others ?? []),
];
