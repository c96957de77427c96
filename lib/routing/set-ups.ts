import { trainFrom } from '../dividing/idlers.ts';
import type { Bore } from '../gears/gear.ts';
import type { Machine } from '../tooling/tooling.ts';
import { needWords } from './needs.ts';
import type { SetUp } from './operation.ts';
import type { MountedNow } from './shop-now.ts';

/** Sizes as whole numbers, so that equal set-ups have equal keys. */
function boreKey(bore: Bore | null): string {
  if (bore === null) return 'bore not known';
  if (bore.form === 'plain') return `plain ${bore.diameter}`;
  if (bore.form === 'keyed') return `keyed ${bore.diameter} ${bore.keyWidth} ${bore.keyDepth}`;
  return `splined ${bore.splines} ${bore.diameter} ${bore.minor} ${bore.keyWidth}`;
}

const mandrelWords = (bore: Bore | null): string => (bore ? needWords({ kind: 'mandrel', bore }) : 'mandrel, bore not known yet');

const keyOf = (place: SetUp['place'], machine: Machine | null, ...held: readonly string[]): string =>
  [place, machine ? `machine ${machine.id}` : '', ...held].filter((part) => part !== '').join(' | ');

const where = (machine: Machine | null, kind: string): string => machine?.name ?? `${kind}, not chosen yet`;

export const BENCH: SetUp = { key: 'bench', place: 'bench', machineId: null, says: 'Bench' };
export const OVEN: SetUp = { key: 'oven', place: 'oven', machineId: null, says: 'Oven, and the drop beside it' };
export const ON_ITS_MACHINE: SetUp = {
  key: 'machine under repair',
  place: 'machine under repair',
  machineId: null,
  says: 'On the machine that it belongs to',
};

/** On a mandrel between the lathe's centres. */
export const betweenCentres = (lathe: Machine | null, bore: Bore | null): SetUp => ({
  key: keyOf('lathe', lathe, 'between centres', boreKey(bore)),
  place: 'lathe',
  machineId: lathe?.id ?? null,
  says: `${where(lathe, 'Lathe')}: between centres on the ${mandrelWords(bore)}`,
});

/** In a chuck of so many jaws. */
export const inChuck = (lathe: Machine | null, jaws: number): SetUp => ({
  key: keyOf('lathe', lathe, `${jaws}-jaw chuck`),
  place: 'lathe',
  machineId: lathe?.id ?? null,
  says: `${where(lathe, 'Lathe')}: ${jaws}-jaw chuck`,
});

/** What stands on the mill while teeth are cut. plate and side: null while no circle is chosen. gears: from spindle to plate, in words; '' without. byDial: a rotary table divided by its dial. */
export type Dividing = {
  readonly turns: number;
  readonly headName: string;
  readonly plate: { readonly id: number; readonly name: string; readonly side: number } | null;
  readonly gears: string;
  readonly byDial?: boolean;
};

const plateKey = ({ id, side }: NonNullable<Dividing['plate']>): string => `plate ${id} side ${side}`;

/** What stands on a head by the key of a set-up that was made there: its plate and gears; null where no plate does. circle: that of its crank. */
export function mountedBy(key: string, circle: number | null): MountedNow | null {
  const [, turns, plateId, side] = /\| head (\d+) \|.*\| plate (\d+) side (\d+)/.exec(key) ?? [];
  if (turns === undefined) return null;
  const train = trainFrom(key.split(' | ').at(-1) ?? '');
  const gears = train ? [...train.drivers, ...train.driven] : [];
  return { turns: Number(turns), plateId: Number(plateId), side: Number(side), gears, ...(circle === null ? {} : { circle }) };
}

/** Dividing head, mandrel and plate on the mill: parts that differ only in circle, sector and cutter share it. */
export const onTheHead = (mill: Machine | null, bore: Bore | null, { turns, headName, plate, gears, byDial = false }: Dividing): SetUp => ({
  key: keyOf('mill', mill, `head ${turns}`, boreKey(bore), plate ? plateKey(plate) : byDial ? 'by its dial' : 'no plate', gears),
  place: 'mill',
  machineId: mill?.id ?? null,
  says: `${where(mill, 'Mill')}: ${headName}, ${plate ? plate.name : byDial ? 'by its dial' : 'no plate that serves'}${gears ? `, geared (${gears})` : ''}, on the ${mandrelWords(bore)}`,
});
