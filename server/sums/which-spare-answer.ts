import { type BlankChoice, chooseBlanks } from '../../lib/blanks/choice.ts';
import { drawerOf } from '../../lib/blanks/drawer.ts';
import { printDrawer } from '../../lib/blanks/read-drawer.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer, AnswerTable } from '../../lib/figure/figure.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import { countRatios } from '../../lib/trains/ratio-count.ts';
import { oneOfEachThere } from '../../lib/trains/wheel-lists.ts';
import { soundWheel } from './sound-wheel.ts';
import { toldFigures } from './told-figure.ts';

/** Beyond this the ratios of too many choices would have to be counted while somebody waits. */
const MOST_MISSING = 6;
const MOST_NUMBERS = 24;

export type WhichSpareKey = 'made' | 'notMade' | 'ratios';

/** Throws DomainError where the exact choice would take longer than a page may. */
function refuseMany(missing: number, numbers: number): void {
  if (missing <= MOST_MISSING && numbers <= MOST_NUMBERS) return;
  throw new DomainError({
    given: `${missing} missing wheels in a set of ${numbers} numbers.`,
    limit: `Here the choice is made for up to ${MOST_MISSING} missing wheels and ${MOST_NUMBERS} numbers.`,
    tryThis: 'Leave out what is not wanted now, or enter the machine: its set page takes more.',
    about: ['wheels'],
  });
}

const figure = toldFigures('derived: every choice held against the others: most wheels made, most ratios, least metal removed');

function pairsTable({ chosen }: BlankChoice, unit: AnswerTable['unit']): AnswerTable {
  return {
    title: 'Which becomes which',
    unit,
    heads: ['make', 'from', 'new outside', 'old outside', 'left a side after cleaning up', 'verdict'],
    rows: chosen.map(({ wanted, spare, judged }) => [
      { count: wanted.gear.teeth },
      { count: spare.gear.teeth },
      { length: judged.sizes.outside },
      { length: judged.oldOutside },
      { length: judged.room.left },
      judged.verdict,
    ]),
  };
}

/**
 * Which spare becomes which missing wheel of a set, all wheels taken as sound, solid and alike but for their teeth.
 * model: a wheel of the set. Throws DomainError for more than 6 missing or more than 24 different numbers.
 */
export function whichSpareAnswer(belongs: readonly number[], there: readonly number[], model: Gear): Answer<WhichSpareKey> {
  const drawer = drawerOf(
    belongs,
    there.map((teeth, at) => soundWheel({ ...model, teeth }, at + 1)),
  );
  refuseMany(drawer.missing.length, new Set(belongs).size);
  const present = drawer.present.map(({ teeth }) => teeth);
  const choice = chooseBlanks({
    missing: drawer.missing.map((teeth, at) => ({ id: at + 1, name: `${teeth}T`, gear: { ...model, teeth } })),
    likes: drawer.likes,
    ratiosAfter: (made) => countRatios(oneOfEachThere(belongs, [...present, ...made])).distinct,
  });
  const notMade = choice.notMade.map(({ gear }) => gear.teeth);
  return {
    figures: {
      made: figure('Wheels made', 'n', { count: choice.chosen.length, unit: 'wheels' }),
      notMade: figure('No spare for', '', { words: notMade.length === 0 ? 'none: all are made' : printDrawer(notMade) }),
      ratios: figure('Ratios then, one wheel of each number', 'A', { count: choice.score.ratios, unit: 'ratios' }),
    },
    cautions: [
      {
        name: 'Size alone',
        says: 'All wheels are taken as sound, soft and solid. Try each spare for webs, hardness and bore before cutting.',
        weight: 'beware',
      },
    ],
    says: choice.says,
    tables: choice.chosen.length === 0 ? [] : [pairsTable(choice, unitOfPitch(model.pitch))],
  };
}
