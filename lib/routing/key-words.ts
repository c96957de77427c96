/** Words that tell no tool from another. */
const SMALL: ReadonlySet<string> = new Set(['a', 'an', 'and', 'for', 'in', 'inch', 'of', 'or', 'the', 'tool', 'wide', 'with']);

const wordsIn = (text: string): string[] => text.toLowerCase().match(/(?:\d+[ -])?\d+\/\d+|\d+(?:\.\d+)?|\p{L}+/gu) ?? [];

/** A size as a number, "1 1/4" and "1.2500" alike; null for a word. */
function sizeOf(word: string): number | null {
  const [whole, fraction] = /[ -]/.test(word) ? word.split(/[ -]/) : ['0', word];
  const [top, bottom = '1'] = (fraction ?? '').split('/');
  const size = Number(whole) + Number(top) / Number(bottom);
  return Number.isFinite(size) ? size : null;
}

/**
 * The words of a need by which a tool is known: "keyway" and "0.2500" of "keyway tool, 0.2500 in wide (broach or slotting tool)".
 * What stands in brackets only explains, and small words are left out.
 */
export const keyWords = (need: string): string[] => [
  ...new Set(wordsIn(need.replace(/\([^)]*\)/g, ' ')).filter((word) => !SMALL.has(word))),
];

/** Whether a tool is called by every key word of a need, in any order and case: "1/4 in Keyway broach". A size counts by its number. */
export function calledBy(tool: string, need: string): boolean {
  const [has, wants] = [wordsIn(tool), keyWords(need)];
  const says = (word: string): boolean => {
    const size = sizeOf(word);
    return has.some((one) => (size === null ? one === word || one === `${word}s` : sizeOf(one) === size));
  };
  return wants.length > 0 && wants.every(says);
}
