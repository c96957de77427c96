/**
 * Which figure of an operation is set by hand: the dial move where there is a dial, else the size to work to. In the order in which they
 * are set; the first that is known leads. once: what leads instead when a reading has been taken. Common practice, no source.
 */
export type Lead = {
  readonly set: readonly string[];
  readonly once?: Readonly<Record<string, readonly string[]>>;
};

const NONE: Lead = { set: [] };
const DIAL_TO_ROOTS: Lead = { set: ['dial', 'turnOff', 'throughTeeth'] };
const DIAL_TO_ROUGH: Lead = { set: ['dial', 'roughTo'] };
const LAST_CUTS: Lead = { set: ['firstCut', 'halfWay', 'secondCut'], once: { halfWay: ['secondCut'] } };
/** Speed, feed and time of a lathe or mill are set once; what changes from piece to piece comes first. */
const BY_SPEED: Lead = { set: ['speed'] };

/** Every operation that lib plans, by its key. */
export const LEADS: Readonly<Record<string, Lead>> = {
  count: NONE,
  'file-test': NONE,
  sound: { set: ['oldRoot'] },
  stock: NONE,
  'lay-out': NONE,
  'bore-work': NONE,
  bore: { set: ['bore'] },
  keyway: NONE,
  spline: NONE,
  'make-mandrel': NONE,
  'prove-mandrel': NONE,
  mount: NONE,
  'through-teeth': DIAL_TO_ROOTS,
  solid: DIAL_TO_ROUGH,
  'last-cuts': LAST_CUTS,
  'hub-through-teeth': DIAL_TO_ROOTS,
  'hub-solid': DIAL_TO_ROUGH,
  'hub-last-cuts': LAST_CUTS,
  'hub-size': { set: ['hub'] },
  'bore-ring': { set: ['ringBore'] },
  'dry-run': NONE,
  'heat-and-drop': { set: ['oven', 'rise'] },
  cool: NONE,
  'mount-ring': NONE,
  faces: { set: ['faceOff', 'face'] },
  blank: { set: ['outside'] },
  edges: NONE,
  chamfer: NONE,
  'line-up': NONE,
  'cutter-on-arbor': BY_SPEED,
  central: { set: ['dial', 'travel'], once: { shift: ['putRight', 'error'] } },
  plate: { set: ['crank', 'sector', 'sectorHoles'] },
  nick: { set: ['nickDepth', 'nicks'] },
  touch: { set: ['dial', 'depth'] },
  rough: { set: ['dial1', 'dial2', 'rough1', 'rough2', 'crank'] },
  'first-span': { set: ['span'], once: { span: ['feedDial', 'stillToFeed', 'span'] } },
  finish: { set: ['crank', 'speed'] },
  measure: { set: ['span', 'outside'] },
  burrs: NONE,
  'tooth-ends': NONE,
  mark: NONE,
  'on-its-shaft': NONE,
  'with-its-mate': NONE,
  hardening: NONE,
  record: NONE,
};
