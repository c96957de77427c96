import { remembered } from '../../db/remembered.ts';
import { ratioScale } from '../../lib/drawing/ratio-scale.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import type { Gear, Pitch } from '../../lib/gears/gear.ts';
import type { WheelsAsked } from '../../lib/trains/missing-cost.ts';
import { type RatioMarks, ratioMarks } from '../../lib/trains/ratio-marks.ts';
import { ratiosAnswer } from '../../lib/trains/trains.sums.ts';
import { sortedWheels } from '../../lib/trains/wheel-lists.ts';
import { inches } from '../../lib/values/length.ts';
import { drawerAnswer } from './drawer-answer.ts';
import { bareGear, pitchField, systemField, systemOf } from './gears.ts';
import { type Recut, recutsField, someWheelsField, wheelsField } from './read-wheels.ts';
import { scaleOf } from './scale.ts';
import { sum } from './sum.ts';
import { whichSpareAnswer } from './which-spare-answer.ts';

const BELONGS = '19, 22, 25, 28, 31, 34, 37, 41, 46, 52';
const DRAWER = '19x2, 25x2, 31x2, 34x2, 37, 41, 46x2, 52';
const ABOUT = { wheels: ['belongs', 'drawer'], missing: ['belongs'], spares: ['drawer'], plannedRecuts: ['recuts'] } as const;

const belongsField = someWheelsField({ label: 'Wheels that belong', hint: 'As on the plate of the machine: 19, 22, 25-31 odd' });
const drawerField = wheelsField({ label: 'Wheels in the drawer', hint: 'As they lie there: 19x2, 25, 31x2' });

/** A wheel of the set; where only the numbers matter, its pitch and system do not. */
const modelOf = (pitch: Pitch, system: string): Gear => ({
  ...bareGear({ teeth: 20, pitch, system: systemOf(system) }),
  bore: { form: 'plain', diameter: inches(0.1) },
  face: inches(1),
  body: { known: true, recesses: [], openings: [] },
});
const ANY_PITCH: Pitch = { kind: 'DP', size: [8, 1] };

const drawerSum = sum({
  path: 'missing-and-spare',
  title: 'What is missing, what is spare',
  group: 'Wheels',
  tells: 'Holds a drawer of change wheels against the plate of the machine, number by number.',
  asks: { belongs: belongsField, drawer: drawerField },
  example: { belongs: BELONGS, drawer: DRAWER },
  about: ABOUT,
  work: ({ belongs, drawer }) => drawerAnswer(belongs, drawer, modelOf(ANY_PITCH, 'full-14.5')),
});

type CostGiven = {
  readonly belongs: readonly number[];
  readonly drawer: readonly number[];
  readonly recuts: readonly Recut[];
  readonly ready: readonly number[];
};

/** What a cost depends on, in one line. */
const keyOf = ({ belongs, drawer, recuts, ready }: CostGiven): string =>
  [sortedWheels(belongs), sortedWheels(drawer), recuts.map(({ make, from }) => `${make}<${from}`), sortedWheels(ready)].join(' | ');

const askedOf = ({ belongs, drawer, recuts, ready }: CostGiven): WheelsAsked => ({
  belongs,
  drawer,
  plannedRecuts: recuts,
  canBeCutToday: ready.map((teeth) => ({ teeth, because: 'it can be cut today' })),
});

const costs = remembered<Answer>();
const marks = remembered<RatioMarks>();
/** As many columns as the narrowest phone has pixels for them. */
const COLUMNS = 320;
/** With more wheels than this the count alone is given: the picture would take as long again. */
const MOST_DRAWN = 45;

const costSum = sum({
  path: 'missing-wheels',
  title: 'What missing wheels cost',
  group: 'Wheels',
  tells: 'How many ratios a set of change wheels gives, how many are lost today, what each wheel brings back, and which to make first.',
  asks: {
    belongs: belongsField,
    drawer: drawerField,
    recuts: recutsField({ label: 'Planned re-cuts', hint: 'As 22 from 31, 28 from 34; the rest is made from stock' }),
    ready: wheelsField({ label: 'Can be cut today', hint: 'Missing wheels for which all is at hand; settles a tie' }),
  },
  example: { belongs: BELONGS, drawer: DRAWER, recuts: '22 from 31, 28 from 34', ready: '28' },
  about: ABOUT,
  parts: [{ legend: 'More, if known', asks: ['recuts', 'ready'], folded: true }],
  work: (given) => costs(keyOf(given), () => ratiosAnswer(askedOf(given))),
  draw: ({ belongs, drawer }) => {
    const numbers = new Set(belongs).size;
    // One number alone gives no ratio but 1 to 1: there is no line to mark it on.
    if (numbers > MOST_DRAWN || numbers < 2) return null;
    const key = [sortedWheels(belongs), sortedWheels(drawer)].join(' | ');
    return ratioScale(scaleOf(marks(key, () => ratioMarks({ belongs, drawer, pixels: COLUMNS }))));
  },
});

const whichSum = sum({
  path: 'which-spare',
  title: 'Which spare becomes which wheel',
  group: 'Wheels',
  tells: 'The best choice over all missing wheels at once: most made, most ratios brought back, least metal turned off.',
  asks: { belongs: belongsField, drawer: drawerField, pitch: pitchField, system: systemField },
  example: { belongs: BELONGS, drawer: DRAWER, pitch: '8 DP', system: 'full-14.5' },
  about: ABOUT,
  work: ({ belongs, drawer, pitch, system }) => whichSpareAnswer(belongs, drawer, modelOf(pitch, system)),
});

export const WHEEL_SUMS = [drawerSum, whichSum, costSum];
