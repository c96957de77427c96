import { DomainError } from '../figure/domain-error.ts';
import { outsideFromJaws, rootFromWall } from '../gears/measured-root.formulas.ts';
import { type Angle, degrees, toDegrees, toRadians } from '../values/angle.ts';
import { type Length, toInches } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import { HELIX_ERROR_DEG, READING_ERROR_IN } from './judgements.data.ts';

type Sized = { readonly size: Length; readonly error?: Length };

/** What was measured. error: what two readings in three stay within; without it the usual one of that kind. */
export type Reading =
  | ({ readonly of: 'outside'; readonly by: 'jaws' | 'true' } & Sized)
  | ({ readonly of: 'root' } & Sized)
  | ({ readonly of: 'depth' } & Sized)
  | ({ readonly of: 'wall'; readonly bore: Length } & Sized)
  | ({ readonly of: 'span'; readonly over: number } & Sized)
  | ({ readonly of: 'over pins'; readonly pin: Length } & Sized)
  | ({ readonly of: 'centres'; readonly mate: number } & Sized)
  | { readonly of: 'helix'; readonly angle: Angle; readonly error?: Angle };

/** A wheel on the bench: its teeth counted, and what was read on it. */
export type MeasuredWheel = { readonly teeth: number; readonly readings: readonly Reading[] };

/** A reading as plain numbers: inches, or radians of a helix. read is what a true diameter would be where jaws could not take it. */
export type Plain = {
  readonly of: 'outside' | 'root' | 'depth' | 'span' | 'over pins' | 'centres' | 'helix';
  readonly read: number;
  readonly error: number;
  /** Teeth of a span, teeth of the mate, or the pin; 0 where there is nothing beside the reading. */
  readonly beside: number;
  readonly name: string;
};

const errorOf = (reading: Exclude<Reading, { of: 'helix' }>): number =>
  reading.error === undefined ? READING_ERROR_IN[reading.of] : toInches(reading.error);

/** The middle of what may stand behind a reading between jaws, and the error with half of that room in it. */
function outside(reading: Extract<Reading, { of: 'outside' }>, N: number): Plain {
  const T = toInches(reading.size);
  const [least, most] = reading.by === 'jaws' ? outsideFromJaws(T, N) : [T, T];
  const error = Math.hypot(errorOf(reading), (most - least) / Math.sqrt(12));
  return { of: 'outside', read: (least + most) / 2, error, beside: 0, name: 'Outside' };
}

/** A reading in inches or radians. */
export function plain(reading: Reading, N: number): Plain {
  if (reading.of === 'outside') return outside(reading, N);
  if (reading.of === 'helix') {
    const error = reading.error === undefined ? degrees(HELIX_ERROR_DEG) : reading.error;
    return { of: 'helix', read: toRadians(reading.angle), error: toRadians(error), beside: 0, name: 'Helix of the print' };
  }
  const [read, error] = [toInches(reading.size), errorOf(reading)];
  if (reading.of === 'wall')
    return { of: 'root', read: rootFromWall(read, toInches(reading.bore)), error: 2 * error, beside: 0, name: 'Root, from the wall' };
  if (reading.of === 'span') return { of: 'span', read, error, beside: reading.over, name: `Over ${reading.over} teeth` };
  if (reading.of === 'over pins') return { of: 'over pins', read, error, beside: toInches(reading.pin), name: 'Over pins' };
  if (reading.of === 'centres') return { of: 'centres', read, error, beside: reading.mate, name: `Centres with ${reading.mate} teeth` };
  return { of: reading.of, read, error, beside: 0, name: reading.of === 'root' ? 'Root' : 'Depth' };
}

const refuse = (given: string, limit: string, tryThis: string, ...about: string[]): never => {
  throw new DomainError({ given, limit, tryThis, about });
};

const SIZES: ReadonlySet<Reading['of']> = new Set(['outside', 'root', 'wall', 'span', 'over pins', 'centres']);

function checkOne({ teeth }: MeasuredWheel, reading: Reading): void {
  if (reading.of === 'helix') {
    const deg = toDegrees(reading.angle);
    if (!(deg >= 0 && deg <= 60))
      refuse(`A print at ${printShort(deg, 2)}°.`, 'Teeth lean from 0° to 60°.', 'Measure it from the axis.', 'helix');
    return;
  }
  if (!(reading.size > 0)) refuse('A reading of nothing.', 'Every reading is above 0.', 'Leave it empty if it was not taken.', reading.of);
  if (reading.error !== undefined && !(reading.error > 0 && reading.error <= reading.size / 4))
    refuse(
      'A reading error that is nothing, or a quarter of the reading.',
      'No tool reads true, and none so badly.',
      'Type what two readings in three stay within.',
      `${reading.of} error`,
    );
  if (reading.of === 'span' && !(Number.isInteger(reading.over) && reading.over >= 1 && reading.over < teeth / 2))
    refuse(
      `A span over ${reading.over} of ${teeth} teeth.`,
      'The jaws hold at least one tooth and less than half of them.',
      'Count the teeth between the jaws.',
      'over',
    );
  if (reading.of === 'wall' && !(reading.bore > 0))
    refuse('A wall without its bore.', 'The root is twice the wall and the bore together.', 'Measure the bore as well.', 'bore');
  if (reading.of === 'over pins' && !(reading.pin > 0 && reading.pin < reading.size / 4))
    refuse('A pin that is no pin.', 'It is thinner than a quarter of the reading over both.', 'Type the pin’s own diameter.', 'pin');
  if (reading.of === 'centres' && !(Number.isInteger(reading.mate) && reading.mate >= 4 && reading.mate <= 2000))
    refuse(`A mate of ${reading.mate} teeth.`, 'It has from 4 to 2000 whole teeth.', 'Count the mate’s teeth.', 'mate');
}

function checkTogether({ teeth, readings }: MeasuredWheel): void {
  const of = (what: Reading['of']): readonly Plain[] => readings.filter((one) => one.of === what).map((one) => plain(one, teeth));
  const [out, root] = [of('outside')[0], of('root')[0] ?? of('wall')[0]];
  if (out && root && root.read >= out.read)
    refuse(
      'The root is not smaller than the outside.',
      'The teeth stand between the two.',
      'Look whether the two were changed about.',
      'outside',
      'root',
    );
  const depth = of('depth')[0];
  if (out && depth && depth.read >= out.read / 2)
    refuse('The depth reaches the middle of the wheel.', 'It is the depth of one space, from the tip.', 'Measure one space.', 'depth');
  const spans = of('span').toSorted((one, other) => one.beside - other.beside);
  for (const [i, span] of spans.entries()) {
    const before = spans[i - 1];
    if (before && !(span.read > before.read))
      refuse(
        `${span.name} is not longer than ${before.name.toLowerCase()}.`,
        'One more tooth between the jaws adds one base pitch.',
        'Look whether the two were changed about.',
        'span',
      );
    if (out && span.read >= out.read)
      refuse(`${span.name} is longer than the outside.`, 'A span is a chord of the wheel.', 'Measure the span again.', 'span');
  }
}

/** Throws DomainError, in shop words, when a wheel's readings make no sense, alone or together. */
export function checkReadings(wheel: MeasuredWheel): void {
  const { teeth, readings } = wheel;
  if (!(Number.isInteger(teeth) && teeth >= 4 && teeth <= 2000))
    refuse('A wheel without a fair count.', 'A wheel has from 4 to 2000 whole teeth.', 'Count the teeth again.', 'teeth');
  if (!readings.some(({ of }) => SIZES.has(of)))
    refuse('No size that tells of the pitch.', 'A tooth count alone fits every pitch.', 'Measure at least the outside.', 'outside');
  for (const reading of readings) checkOne(wheel, reading);
  checkTogether(wheel);
}
