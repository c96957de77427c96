/**
 * What readings on a wheel of the drawer are called. wall: least of six from bore to root; bore: as measured, beside it; the others as
 * lib's RootReading has them. From span on: what a wheel is identified by; `pins` lie on the bottoms of the spaces, `flankPins` on the flanks.
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
  span: 'span',
  outside: 'outside, true diameter',
  root: 'root diameter',
  flankPins: 'over two pins, on the flanks',
  centres: 'centre distance with a mate',
  print: 'lean of a rolled print',
} as const;

export type ReadingName = (typeof READING_NAMES)[keyof typeof READING_NAMES];
