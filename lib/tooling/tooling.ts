import type { Bore, Pitch } from '../gears/gear.ts';
import type { Angle } from '../values/angle.ts';
import type { Length } from '../values/length.ts';
import type { Ratio } from '../values/ratio.ts';

/** What every piece of tooling has. here: in the shop and fit for work (not lent out, not worn out). */
type Tool = { readonly id: number; readonly name: string; readonly here: boolean };

export type CutterSteel = 'high-speed' | 'carbon' | 'carbide' | 'unknown';

/** A form cutter. Without pitch, angle and tooth range it is offered for nothing: number sets differ by maker. */
export type Cutter = Tool & {
  readonly kind: 'cutter';
  readonly pitch: Pitch | null;
  readonly angle: Angle | null;
  readonly number: string;
  readonly teethFrom: number | null;
  /** null with teethFrom given: up to a rack. */
  readonly teethTo: number | null;
  readonly hole: Length | null;
  readonly diameter: Length | null;
  readonly width: Length | null;
  readonly stampedDepth: Length | null;
  readonly steel: CutterSteel;
  /** The tooth count that its form is exact for, if known; else the low end of its range. */
  readonly exactFor: number | null;
  readonly sharp: boolean;
};

export type Plate = Tool & { readonly kind: 'plate'; readonly sides: readonly (readonly number[])[] };
/**
 * The divided dial of a rotary table's handwheel. perTurn: lines once round; vernier: parts into which it divides a line, 1 without.
 * near: the owner divides by it also what falls between the lines, with the error said.
 */
export type HeadDial = { readonly perTurn: number; readonly vernier: number; readonly near: boolean };
/**
 * turns: turns of the crank for one turn of the spindle. reached: circles that the back pin reaches; left out while it has not been tried.
 * gears: change gears that go on it, each physical gear once. oneIdler: which way its plate turns with a simple train and one idler, seen
 * from the crank; null or left out while that has not been tried. dialOnly: it takes no index plate. lash: turns of the crank or handwheel
 * before the spindle moves; left out while not measured.
 */
export type Head = Tool & {
  readonly kind: 'head';
  readonly turns: number;
  readonly backPin: boolean;
  readonly reached?: readonly number[];
  readonly gears?: readonly number[];
  readonly oneIdler?: 'with' | 'against' | null;
  readonly dial?: HeadDial;
  readonly dialOnly?: boolean;
  readonly lash?: Ratio;
};
export type Mandrel = Tool & { readonly kind: 'mandrel'; readonly bore: Bore; readonly holding: string; readonly runOut: Length | null };
export type Arbor = Tool & { readonly kind: 'arbor'; readonly diameter: Length };
/** topSpeedRpm: the maker's limit, if known. runOut: full indicator reading, if measured. */
export type Chuck = Tool & {
  readonly kind: 'chuck';
  readonly jaws: number;
  readonly diameter: Length;
  readonly runOut: Length | null;
  readonly topSpeedRpm: number | null;
};
/** Anything else that an operation may need by name: a tap, a gauge, a dog. */
export type OtherTool = Tool & { readonly kind: 'other' };

export type AnyTool = Cutter | Plate | Head | Mandrel | Arbor | Chuck | OtherTool;

/**
 * reads: what one turn of the dial stands for on the work, tool travel or diameter. division: the least division, as the dial reads. lash: what
 * it turns before the slide moves, as the dial reads; left out while not measured.
 */
export type Dial = {
  readonly reads: 'travel' | 'diameter';
  readonly unit: 'in' | 'mm';
  readonly division: Length;
  readonly perTurn: number;
  readonly lash?: Length;
};

export type MachineKind = 'lathe' | 'mill' | 'drill' | 'shaper' | 'planer' | 'other';

/** A shop machine. feeds: per spindle turn on a lathe, per minute on a mill with its own feed drive (feedsPer says which). */
export type Machine = {
  readonly id: number;
  readonly name: string;
  readonly kind: MachineKind;
  readonly speedsRpm: readonly number[];
  readonly feeds: readonly Length[];
  readonly feedsPer: 'turn' | 'minute';
  readonly crossDial: Dial | null;
  readonly depthDial: Dial | null;
  readonly screwedNose: boolean;
};
