import { addReading, type NewReading, type ReadOn, readingsOf } from '../../db/readings.ts';
import { READING_NAMES } from '../../db/spares/reading-names.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { TypedLength } from '../../lib/values/read.ts';
import { dayOf } from '../forms/date-field.ts';
import { readForm } from '../forms/form.ts';
import type { Db, Visit } from '../visit.ts';
import { type Boxes, IDENTIFY_ASKS, wheelsOf } from './identify-asks.ts';
import { type TakenAnswer, takenAnswers } from './taken-answers.ts';

/** An answer that somebody takes into a wheel, worked out anew from what was typed, and the readings that it rests on. */
export type AnswerTaken = { readonly answer: TakenAnswer; readonly foundBy: string; readonly readings: readonly NewReading[] };

type Read = Pick<NewReading, 'what'> & Partial<Pick<NewReading, 'over_k' | 'pin' | 'mateTeeth'>>;
type How = Pick<NewReading, 'read_on' | 'instrument'>;

const lengthRead = (read: Read, size: TypedLength | null, error: TypedLength | null, how: How): NewReading[] =>
  size ? [{ ...how, ...read, value: { length: size.length }, form: size.form, error: error ? { length: error.length } : null }] : [];

/** What stands in the boxes as readings of the wheel. */
function readingsIn(boxes: Boxes, on: string): NewReading[] {
  const how: How = { read_on: on, instrument: '' };
  const { outside, outsideBy, outsideError, spanError, rootError, pinsError, centresError, pinUsed, print, mate } = boxes;
  const k = boxes.k ?? 0;
  const spans = [boxes.spanRead, boxes.spanMore, boxes.spanMost];
  const wall = boxes.wallBore ? boxes.wallRead : null;
  return [
    ...lengthRead({ what: outsideBy === 'true' ? READING_NAMES.outside : READING_NAMES.jaws }, outside, outsideError, how),
    ...spans.flatMap((span, more) => lengthRead({ what: READING_NAMES.span, over_k: k + more }, span, spanError, how)),
    ...lengthRead({ what: READING_NAMES.root }, boxes.rootRead, rootError, how),
    ...lengthRead({ what: READING_NAMES.depth }, boxes.depthRead, rootError, how),
    ...lengthRead({ what: READING_NAMES.wall }, wall, rootError, how),
    ...lengthRead({ what: READING_NAMES.bore }, wall ? boxes.wallBore : null, null, how),
    ...lengthRead({ what: READING_NAMES.flankPins, pin: pinUsed?.length ?? null }, boxes.overPins, pinsError, how),
    ...lengthRead({ what: READING_NAMES.centres, mateTeeth: mate }, boxes.centres, centresError, how),
    ...(print === null ? [] : [{ ...how, what: READING_NAMES.print, value: { angle: print } }]),
  ];
}

const refuse = (given: string): DomainError =>
  new DomainError({
    given,
    limit: 'Only an answer that stands on the page can be taken.',
    tryThis: 'Work it out again on the page “What is this gear?”, and take one of the answers there.',
    about: ['answer'],
  });

/** Works the boxes that were sent along out again, and finds the answer that was chosen. Throws DomainError. */
export function answerTaken({ body, now }: Visit): AnswerTaken {
  const asked = Object.fromEntries(Object.keys(IDENTIFY_ASKS).map((name) => [name, body[name]]));
  const read = readForm(asked, IDENTIFY_ASKS);
  if (!read.ok) throw refuse('The readings that were sent along cannot be read.');
  const on = dayOf(now);
  const answer = takenAnswers(wheelsOf(read.value)).find(({ key }) => key === body['answer']);
  if (!answer) throw refuse('The answer that was chosen is none that these readings give.');
  return { answer, foundBy: `by measurement, ${on}: ${answer.said}`, readings: readingsIn(read.value, on) };
}

const ROOTS: readonly string[] = [READING_NAMES.root, READING_NAMES.across];
const same = (one: string, other: string): boolean => one === other || (ROOTS.includes(one) && ROOTS.includes(other));

/** Notes the readings that are not on record there yet: nothing is typed twice, and nothing stands twice. */
export async function noteReadings(db: Db, on: ReadOn, readings: readonly NewReading[]): Promise<void> {
  const before = await readingsOf(db, on);
  for (const reading of readings) {
    const size = 'length' in reading.value ? reading.value.length : 'angle' in reading.value ? reading.value.angle : null;
    const there = before.some(
      (one) => same(one.what, reading.what) && one.value === size && (one.over_k ?? null) === (reading.over_k ?? null),
    );
    if (!there) await addReading(db, on, reading);
  }
}
