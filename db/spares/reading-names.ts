/**
 * What readings on a wheel of the drawer are called. wall: least of six from bore to root; bore: as measured, beside it; the others as
 * lib's RootReading has them. doubt is no reading: it is struck when cleared.
 */
export const READING_NAMES = {
  wall: 'least wall, bore to root',
  bore: 'bore',
  across: 'across roots',
  depth: 'depth of tooth',
  jaws: 'outside between jaws',
  pins: 'over two pins',
  runOut: 'full indicator reading of the roots',
  caseDepth: 'case depth',
} as const;

export type ReadingName = (typeof READING_NAMES)[keyof typeof READING_NAMES];
