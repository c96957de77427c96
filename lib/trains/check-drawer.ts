import { DomainError } from '../figure/domain-error.ts';

const MOST_WHEELS = 100;
export const LEAST_TEETH = 4;
/** Up to here six wheels keep their products apart as plain numbers; see nearestTrains. */
export const MOST_TEETH = 400;

/** Throws DomainError for more than 100 wheels, or for a tooth count that no change wheel has. */
export function checkDrawer(wheels: readonly number[]): void {
  if (wheels.length > MOST_WHEELS)
    throw new DomainError({
      given: `The drawer comes to ${wheels.length} wheels.`,
      limit: `At most ${MOST_WHEELS} can be searched at once, so that the answer comes at once.`,
      tryThis: 'Leave out wheels of another pitch or bore, or third wheels of one number.',
      about: ['drawer'],
    });
  const odd = wheels.find((teeth) => !Number.isInteger(teeth) || teeth < LEAST_TEETH || teeth > MOST_TEETH);
  if (odd === undefined) return;
  throw new DomainError({
    given: `${odd} is no tooth count of a change wheel.`,
    limit: `A wheel may have from ${LEAST_TEETH} to ${MOST_TEETH} teeth, in whole numbers.`,
    tryThis: 'Type each wheel as its number of teeth.',
    about: ['drawer'],
  });
}
