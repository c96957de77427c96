import { conditionText, type Looked } from '../../db/spares/condition.ts';
import type { Hardness } from '../../lib/gears/gear.ts';

/** Where a file is tried on a wheel. */
export const FILE_PLACES = ['tip', 'root', 'web', 'bore'] as const;
type FilePlace = (typeof FILE_PLACES)[number];
export const FILE_WORDS = ['not tried', 'bites', 'skates'] as const;
type FileWord = (typeof FILE_WORDS)[number];
export type FileTest = Readonly<Record<FilePlace, FileWord>>;

export const NOT_TRIED: FileTest = { tip: 'not tried', root: 'not tried', web: 'not tried', bore: 'not tried' };

const HEAD = '; file: ';

/** Condition of teeth and bore, and the file test, as a thing's condition keeps them: "teeth worn, bore good; file: tip skates, web bites". */
export function conditionWithTest(looked: Looked, test: FileTest): string {
  const tried = FILE_PLACES.filter((place) => test[place] !== 'not tried').map((place) => `${place} ${test[place]}`);
  return tried.length === 0 ? conditionText(looked) : `${conditionText(looked)}${HEAD}${tried.join(', ')}`;
}

/** The file test out of a thing's condition. */
export function fileTestOf(condition: string): FileTest {
  const tail = condition.split(HEAD)[1] ?? '';
  const word = (place: FilePlace): FileWord => {
    const found = new RegExp(`\\b${place} (bites|skates)`).exec(tail)?.[1];
    return FILE_WORDS.find((one) => one === found) ?? 'not tried';
  };
  return { tip: word('tip'), root: word('root'), web: word('web'), bore: word('bore') };
}

/**
 * What the file test says of the whole wheel. A file that skates on the web: hard right through. Skates on teeth or bore and bites on the
 * web: case-hardened. Bites on the teeth and skates nowhere: soft. Anything less says nothing yet. Common practice, no source.
 */
export function hardnessBy(test: FileTest): Hardness {
  const words = FILE_PLACES.map((place) => test[place]);
  if (test.web === 'skates') return 'hard through';
  if (words.includes('skates')) return test.web === 'bites' ? 'case hard' : 'not tried';
  return test.tip === 'bites' || test.root === 'bites' ? 'file bites' : 'not tried';
}

export const wasTried = (test: FileTest): boolean => FILE_PLACES.some((place) => test[place] !== 'not tried');
