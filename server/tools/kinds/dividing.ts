import type { Head, Plate } from '../../../lib/tooling/tooling.ts';
import { quoted, type Read, read, unread } from '../../../lib/values/read.ts';
import { choiceField, countField, type Field, optional, readField, tickField } from '../../forms/field.ts';
import type { ValuesOf } from '../../forms/form.ts';
import { wheelsField } from '../../forms/wheels-field.ts';
import { factView } from '../../sizes.ts';
import { DIAL_FIELDS, dialTyped, dialWords, lashWords, typedOfDial } from './dial-fields.ts';
import { type Detailed, kindForm } from './kind-form.ts';

const HOLES = { least: 2, most: 400 };
const MOST_CIRCLES = 30;

const HOW = 'Type the holes of each circle with blanks between: 15 16 17 18 19 20.';

/** The circles of one side: 15 16 17 18 19 20, with blanks, commas or dashes between, as the sums read them. Sorted, each once. */
export function readCircles(text: string): Read<readonly number[]> {
  const words = text.split(/[\s,;–-]+/).filter((word) => word !== '');
  const wrong = words.find((word) => !/^\d{1,4}$/.test(word) || Number(word) < HOLES.least || Number(word) > HOLES.most);
  if (wrong !== undefined) return unread(`${quoted(wrong)} is no circle of ${HOLES.least} to ${HOLES.most} holes. ${HOW}`);
  if (words.length > MOST_CIRCLES) return unread(`${words.length} circles on one side are too many: at most ${MOST_CIRCLES}.`);
  const circles = words.map(Number);
  const twice = circles.find((holes, at) => circles.indexOf(holes) !== at);
  return twice === undefined ? read(circles.sort((a, b) => a - b)) : unread(`The circle of ${twice} is typed twice.`);
}

const circlesField = (label: string): Field<readonly number[]> => ({
  ...readField({ label, hint: 'Holes of each circle: 15 16 17 18 19 20', read: readCircles }),
  optional: true,
});

const plateFields = () => ({ side1: circlesField('Circles on side 1'), side2: circlesField('Circles on side 2') });

function plateDetails({ side1, side2 }: ValuesOf<ReturnType<typeof plateFields>>): Detailed {
  if (side1.length === 0) return { ok: false, problems: { side1: 'Type the circles of one side at least, and begin with side 1.' } };
  return { ok: true, details: { kind: 'plate', sides: side2.length > 0 ? [side1, side2] : [side1] }, forms: {} };
}

const circlesOf = ({ sides }: Pick<Plate, 'sides'>): string => sides.map((side) => side.join(' ')).join(' · ');

export const plateForm = kindForm({
  kind: 'plate',
  one: 'Index plate',
  many: 'Index plates',
  blunts: false,
  fields: plateFields,
  fresh: {},
  groups: [{ legend: 'Its circles', names: ['side1', 'side2'] }],
  details: plateDetails,
  name: ({ sides }) => `Plate ${sides[0]?.[0] ?? ''} to ${sides[0]?.at(-1) ?? ''}`,
  typed: ({ tool }) => ({ side1: tool.sides[0]?.join(' ') ?? '', side2: tool.sides[1]?.join(' ') ?? '' }),
  short: circlesOf,
  sizes: ({ tool }) => tool.sides.map((side, at) => factView(`side${at + 1}`, `Circles on side ${at + 1}`, side.join('  '))),
  lacks: () => '',
});

const headFields = () => ({
  turns: countField({
    label: 'Turns of the crank for one of the spindle',
    hint: '40 on most heads; a rotary table may have 90',
    limits: { least: 1, most: 360 },
    unit: 'turns',
  }),
  backPin: tickField({ label: 'Has a back pin for compound indexing' }),
  reached: { ...circlesField('Circles that the back pin reaches'), hint: 'As 20 33 49. Empty: not tried' },
  gears: wheelsField('Change gears that go on it', 'For differential indexing, as 24x2, 28, 32, 40. Empty: none'),
  oneIdler: optional(
    choiceField<'with' | 'against'>({
      label: 'Simple train, one idler: the plate turns',
      hint: 'Try it once, seen from the crank. Empty: not tried',
      choices: [
        ['with', 'with the crank'],
        ['against', 'against the crank'],
      ],
    }),
  ),
  ...DIAL_FIELDS,
});

type HeadTyped = ValuesOf<ReturnType<typeof headFields>>;
function headDetails({ turns, backPin, reached, gears, oneIdler, ...dial }: HeadTyped): Detailed {
  const found = dialTyped(dial, turns);
  if (!found.ok) return found;
  const details = { kind: 'head' as const, turns, backPin, oneIdler, gears, ...(reached.length > 0 ? { reached } : {}), ...found.kept };
  return { ok: true, details, forms: {} };
}
const oneIdlerWords = (oneIdler: Head['oneIdler']): string => (oneIdler ? `turns the plate ${oneIdler} the crank` : 'not tried yet');

const backPinWords = ({ backPin, reached }: Pick<Head, 'backPin' | 'reached'>): string =>
  backPin ? `reaches ${reached ? `circles ${reached.join(', ')}` : 'not tried yet'}` : 'no';

const onPlates = (tool: Head) => [
  factView('gears', 'Change gears', tool.gears?.join(', ') ?? 'none'),
  factView('one-idler', 'Simple train, one idler', oneIdlerWords(tool.oneIdler)),
  factView('back-pin', 'Back pin', backPinWords(tool)),
];

export const headForm = kindForm({
  kind: 'head',
  one: 'Dividing head or rotary table',
  many: 'Dividing heads and rotary tables',
  blunts: false,
  fields: headFields,
  fresh: { turns: '40' },
  groups: [
    { legend: 'How it divides', names: ['turns', 'lash', 'gears', 'oneIdler', 'backPin', 'reached'] },
    { legend: 'The dial of a rotary table', names: ['dialLines', 'dialVernier', 'dialNear', 'dialOnly'] },
  ],
  details: headDetails,
  name: ({ turns }) => `Dividing head ${turns} to 1`,
  typed: ({ tool }) => ({
    turns: String(tool.turns),
    backPin: tool.backPin ? 'yes' : '',
    reached: tool.reached?.join(' ') ?? '',
    gears: tool.gears?.join(', ') ?? '',
    oneIdler: tool.oneIdler ?? '',
    ...typedOfDial(tool),
  }),
  short: ({ turns, backPin, dial }) => `${turns} to 1${backPin ? ', back pin' : ''}${dial ? `, dial of ${dial.perTurn} lines` : ''}`,
  sizes: ({ tool }) => [
    factView('turns', 'Crank for one turn of the spindle', String(tool.turns), 'turns'),
    ...(tool.dialOnly ? [] : onPlates(tool)),
    factView('dial', 'Divided dial', dialWords(tool)),
    factView('plates', 'Index plates', tool.dialOnly ? 'takes none' : 'takes them'),
    factView('lash', 'Lash of the crank', lashWords(tool)),
  ],
  lacks: () => '',
});
