import type { PartLine } from '../../db/parts.ts';
import { wholeNumberFor } from '../../lib/cutters/ranges.ts';
import { MATERIALS } from '../../lib/gears/gear.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import { to } from '../addresses.ts';
import { heads, linkCell } from '../cells.ts';
import { typedOfGear } from '../forms/gear-typed.ts';
import type { TableView } from '../page.ts';
import type { FigureGroup } from './view-model.ts';

type Asked = Readonly<Record<string, string>>;
type Row = readonly [says: string, path: string, asked: Asked];
type Wheel = { readonly teeth: string; readonly pitch: string; readonly system: string; readonly face: string; readonly helix: string };
type Part = Pick<PartLine, 'name' | 'material' | 'stored'>;

/** Where nothing else is known; each is put right on the page of the sum. */
const USUAL = { in: { backlash: '0.004', step: '0.010' }, mm: { backlash: '0.1 mm', step: '0.25 mm' } } as const;
const usual = ({ pitch }: Wheel) => USUAL[pitch.startsWith('module') ? 'mm' : 'in'];
const bare = ({ teeth, pitch, system }: Wheel): Asked => ({ teeth, pitch, system });
const whole = (wheel: Wheel): Asked => ({ ...bare(wheel), helix: wheel.helix, plane: 'normal' });

const metalOf = ({ material }: Part): string => MATERIALS.find((one) => one === material && one !== 'unknown') ?? 'steel';

/** What is asked of straight teeth alone. Strength and classes of tolerance need the face. */
function straightRows(wheel: Wheel, part: Part): Row[] {
  if (wheel.helix !== '') return [];
  const { face } = wheel;
  const faced: Row[] = [
    ['What a tooth bears', 'tooth-strength', { ...bare(wheel), face, material: metalOf(part), speedRpm: '100' }],
    ['How true it is, by ISO 1328', 'tooth-accuracy', { ...bare(wheel), face, runOut: '', singlePitch: '', cumulativePitch: '', lead: '' }],
  ];
  return [
    ['Backlash: span, depth, centres', 'backlash', { ...bare(wheel), backlash: usual(wheel).backlash }],
    ...(face === '' ? [] : faced),
  ];
}

/** Its mate is not known: the sums begin with one of its own count. */
const measuredRows = (wheel: Wheel, part: Part): Row[] => [
  ['Over pins', 'over-pins', whole(wheel)],
  ['Undercut, least teeth, pointed tips', 'undercut', whole(wheel)],
  ['Profile shift', 'profile-shift', { ...whole(wheel), shift: '0' }],
  ['With a mate, at a centre distance', 'gear-pair', { ...whole(wheel), mate: wheel.teeth, mateIs: 'wheel' }],
  ['With a mate: contact and interference', 'contact-ratio', { ...whole(wheel), mate: wheel.teeth, mateIs: 'wheel' }],
  ['On a rack', 'contact-ratio', { ...whole(wheel), mate: wheel.teeth, mateIs: 'rack' }],
  ...straightRows(wheel, part),
];

function toolRows(wheel: Wheel, { convention }: Pick<ShopNow, 'convention'>): Row[] {
  const { teeth, helix } = wheel;
  const number = helix === '' ? wholeNumberFor(Number(teeth))?.number : undefined;
  const formed = { ...bare(wheel), helix };
  const ground = { ...formed, step: usual(wheel).step, times: '10' };
  return [
    ...(number ? [['Its numbered cutter, all along the flank', 'numbered-cutter', { ...formed, number, convention }] as const] : []),
    ['A fly cutter or shaper tool ground to its space', 'ground-tool', { ...ground, kind: 'wheel' }],
    ['A cutter turned with two discs', 'two-disc-tool', formed],
  ];
}

/** What the record has no place for: the count and pitch are handed on, the rest is the example's and is typed over. */
function otherRows(wheel: Wheel): Row[] {
  const { teeth, helix } = wheel;
  const pair = { ...bare(wheel), mate: teeth, shafts: '90' };
  const inside = String(Math.max(4, Math.floor(Number(teeth) / 2)));
  return [
    ['A ring with teeth on the inside', 'internal-gear', { ...whole(wheel), pinion: inside }],
    ['Between pins of a ring', 'between-pins', whole(wheel)],
    ['A straight bevel wheel', 'bevel-pair', { ...pair, face: '' }],
    ['The wheel of a worm', 'worm-and-wheel', { ...bare(wheel), starts: '1', wormPitchDiameter: '2.000', hand: 'right', embrace: '60' }],
    ['One of two on crossed shafts', 'crossed-helical', { ...pair, helix: helix || '45', hand: 'right' }],
  ];
}

/** Words in the name of a part that the record holds no teeth of, and the sums that they ask for. */
const BY_NAME: readonly (readonly [word: RegExp, rows: readonly (readonly [says: string, path: string])[]])[] = [
  [
    /bevel|mit(re|er)/i,
    [
      ['Sizes of a straight bevel wheel', 'bevel-pair'],
      ['Milling a bevel wheel', 'milled-bevel'],
    ],
  ],
  [/worm/i, [['Worm and wheel', 'worm-and-wheel']]],
  [
    /\bring\b|internal|annul/i,
    [
      ['Sizes of a ring with teeth on the inside', 'internal-gear'],
      ['Between its pins', 'between-pins'],
    ],
  ],
  [/\brack\b/i, [['Dividing a rack by the table screw', 'rack-indexing']]],
  [
    /shaft|splin|mandrel|arbor/i,
    [
      ['Find a spline from three sizes', 'find-a-spline'],
      ['Mill a splined shaft', 'mill-splined-shaft'],
      ['Involute spline', 'involute-spline'],
    ],
  ],
  [
    /hub|sleeve|coupling/i,
    [
      ['Find a spline from three sizes', 'find-a-spline'],
      ['Splined hub', 'splined-hub'],
    ],
  ],
];

const table = (id: string, title: string, rows: readonly Row[]): TableView => ({
  title,
  heads: heads(['Sum', 'name']),
  rows: rows.map(([says, path, asked], at) => ({ id: `sum-${id}-${at + 1}`, cells: [linkCell(says, to.sum(path, asked))] })),
  empty: '',
});

const group = (says: string, tables: readonly TableView[]): FigureGroup => ({
  id: 'sums',
  title: 'Sums',
  says,
  figures: [],
  cautions: [],
  folded: false,
  tables,
});

const EXAMPLES = 'The record keeps no sizes of such a part: each sum begins with an example, to be typed over.';
const FILLED = 'Each sum begins with the sizes of this wheel; what the record does not hold is to be typed over.';

function namedGroup({ name }: Part): FigureGroup[] {
  const rows = BY_NAME.flatMap(([word, sums]) => (word.test(name) ? sums : [])).map(([says, path]): Row => [says, path, {}]);
  return rows.length === 0 ? [] : [group(EXAMPLES, [table('named', 'By its name', rows)])];
}

/** Every further sum that a part leads to, filled in: from its wheel, or from its name where no teeth are on record. */
export function sumsOfPart(part: Part, shop: Pick<ShopNow, 'convention'>): FigureGroup[] {
  if (!part.stored) return namedGroup(part);
  const { teeth = '', pitch = '', system = '', face = '', helix = '' } = typedOfGear(part.stored, 'in');
  if (system === 'own') return [];
  const wheel = { teeth, pitch, system, face, helix };
  return [
    group(FILLED, [
      table('measured', 'Measure it, mesh it, load it', measuredRows(wheel, part)),
      table('tools', 'Tools for its teeth', toolRows(wheel, shop)),
      table('others', 'Should it be another kind of wheel', otherRows(wheel)),
    ]),
  ];
}
