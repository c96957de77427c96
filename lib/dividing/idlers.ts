import type { DifferentialSetting } from './differential.ts';

/** Which way the plate of a head turns with a simple train and one idler, seen from the crank; null while it has not been tried. */
export type OneIdler = 'with' | 'against' | null;

export const plateWay = ({ plateTurns }: Pick<DifferentialSetting, 'plateTurns'>): 'with' | 'against' =>
  plateTurns[0] > 0 ? 'with' : 'against';

/**
 * Idlers that make the plate turn the way it should. A simple train with one idler and a compound one with none turn it alike; each
 * idler more turns it the other way. oneIdler: the fact of the head. Source: derived: every mesh turns the direction round.
 * Example: 71 set for 72, a head that turns it with: one. Set for 70: two.
 */
export function idlersFor(setting: Pick<DifferentialSetting, 'plateTurns' | 'train'>, oneIdler: 'with' | 'against'): number {
  const alike = plateWay(setting) === oneIdler;
  return setting.train.drivers.length === 1 ? (alike ? 1 : 2) : alike ? 0 : 1;
}

const idlerWords = (idlers: number): string => (['no idler', 'one idler', 'two idlers'] as const)[idlers] ?? `${idlers} idlers`;

/** The idlers in words; both while the head has not been tried. */
export function idlersSay(setting: Pick<DifferentialSetting, 'plateTurns' | 'train'>, oneIdler: OneIdler): string {
  if (oneIdler) return idlerWords(idlersFor(setting, oneIdler));
  const [withIt, against] = [idlersFor(setting, 'with'), idlersFor(setting, 'against')];
  return `${idlerWords(withIt)} or ${idlerWords(against)}: not tried on this head`;
}

/** "40 on the spindle, 72 on the plate’s shaft". */
export function trainWords({ drivers, driven }: DifferentialSetting['train']): string {
  const [spindle, onStud] = drivers;
  const [first, second] = driven;
  return drivers.length === 1
    ? `${spindle} on the spindle, ${first} on the plate’s shaft`
    : `${spindle} on the spindle drives ${first} on the stud; with it ${onStud} drives ${second} on the plate’s shaft`;
}

const WORDS =
  /^(\d+) on the spindle(?:, (\d+) on the plate’s shaft| drives (\d+) on the stud; with it (\d+) drives (\d+) on the plate’s shaft)$/;

/** The gears that were put into words by trainWords; null for any other words. */
export function trainFrom(words: string): DifferentialSetting['train'] | null {
  const [, spindle, plate, first, onStud, second] = WORDS.exec(words) ?? [];
  if (plate !== undefined) return { drivers: [Number(spindle)], driven: [Number(plate)] };
  return second === undefined ? null : { drivers: [Number(spindle), Number(onStud)], driven: [Number(first), Number(second)] };
}
