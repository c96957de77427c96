import { addTool } from '../../../db/tools.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { send, type TestShop } from '../app-for-tests.ts';

/** The machine, set and drawer of the first story, as a person types them. Sizes, counts and history: story. */
export const MACHINE = {
  make: 'Halvorsen',
  model: 'H-12',
  what: 'gear hobber',
  size: '12 in',
  year: 'about 1926',
  serial: '4071',
  notes: '',
};
export const SET = {
  name: 'Index change gears',
  sets: 'tooth counts',
  assembly: '',
  newAssembly: 'Change gears',
  sizes: 'in',
  pitch: '8 DP',
  system: 'full-14.5',
  face: '0.875',
  bore: 'splined',
  boreDiameter: '1.250',
  boreMinor: '1.0625',
  splines: '6',
  keyWidth: '0.3125',
  body: 'solid',
  belongs: '19, 22, 25, 28, 31, 34, 37, 41, 46, 52',
  drawer: '19x2, 25x2, 31x2, 34x2, 37, 41, 46x2, 52',
  material: 'steel',
  hardness: 'file bites',
  trust: 'original',
  notes: '',
};

const goneTo = (answer: { readonly headers: Readonly<Record<string, unknown>> }): string => String(answer.headers['location'] ?? '');

export async function machine(shop: TestShop): Promise<string> {
  return goneTo(await send(shop, '/machines', MACHINE));
}

/** Types machine and set in; gives the address of each. */
export async function storyOne(shop: TestShop, set: Readonly<Record<string, string>> = SET): Promise<{ machine: string; set: string }> {
  const at = await machine(shop);
  return { machine: at, set: goneTo(await send(shop, `${at}/sets`, set)) };
}

/** The cutter that the tool drawer holds: No. 4, and its arbor. */
export async function cutterNumberFour(shop: TestShop): Promise<void> {
  const here = { owner: '', here: 1 as const, lent_to: '', due_on: null, wear: 'sharp' as const, kept_in: '', notes: '' };
  await addTool(shop.shops.own, { ...here, name: '1 in arbor', details: { kind: 'arbor', diameter: inches(1) } });
  await addTool(shop.shops.own, {
    ...here,
    name: 'No. 4',
    details: {
      kind: 'cutter',
      pitch: { kind: 'DP', size: ratio(8) },
      angle: degrees(14.5),
      number: '4',
      teethFrom: 26,
      teethTo: 34,
      hole: inches(1),
      diameter: null,
      width: null,
      stampedDepth: null,
      steel: 'high-speed',
      exactFor: null,
    },
  });
}
