import { DomainError } from '../figure/domain-error.ts';

export const MOST_WHEELS = 100;
/** With six in a train the work grows with the cube of the wheels. */
const MOST_FOR_SIX = 48;
const LEAST_TEETH = 4;
/** Up to here six wheels keep their products apart as plain numbers; see nearestTrains. */
const MOST_TEETH = 400;

/** Throws DomainError for more than 100 wheels (48 for trains of six), or for a tooth count that no change wheel has. */
export function checkDrawer(wheels: readonly number[], wheelsInTrain: number): void {
  const most = wheelsInTrain === 6 ? MOST_FOR_SIX : MOST_WHEELS;
  if (wheels.length > most)
    throw new DomainError({
      given: `The drawer comes to ${wheels.length} wheels.`,
      limit: `At most ${most} can be searched for trains of ${wheelsInTrain === 6 ? 'six' : 'two and four'}, so that the answer comes at once.`,
      tryThis: 'Leave out wheels of another pitch or bore, or third wheels of one number.',
      about: ['drawer'],
    });
  checkTeeth(wheels, MOST_TEETH, 'drawer');
}

/** Throws DomainError for a tooth count that no change wheel has; most: what the search at hand can bear. */
export function checkTeeth(wheels: readonly number[], most: number, about: string): void {
  const odd = wheels.find((teeth) => !Number.isInteger(teeth) || teeth < LEAST_TEETH || teeth > most);
  if (odd === undefined) return;
  throw new DomainError({
    given: `${odd} is no tooth count of a change wheel.`,
    limit: `A wheel may have from ${LEAST_TEETH} to ${most} teeth, in whole numbers.`,
    tryThis: 'Type each wheel as its number of teeth.',
    about: [about],
  });
}
