import type { Convention } from '../lib/cutters/ranges.ts';
import { CONVENTIONS } from '../lib/cutters/ranges.ts';
import type { ShopNow } from '../lib/routing/shop-now.ts';
import type { AnyTool, Machine, MachineKind } from '../lib/tooling/tooling.ts';
import { inches, type Length, type LengthUnit } from '../lib/values/length.ts';
import { readLength } from '../lib/values/read.ts';
import type { Executor } from './executor.ts';
import { machines } from './machines.ts';
import { mountedNow } from './mounted.ts';
import { settings } from './settings.ts';
import { allTools } from './tools.ts';
import { untilChanged } from './until-changed.ts';

/** What lengths among the owner's defaults may be, and what stands until they are typed; a clean-up that nobody typed is lib's own judgement. In inches, as their form asks for them. */
const THIN = {
  cleanUp: { most: 0.25, asDelivered: undefined },
  paper: { most: 0.02, asDelivered: inches(0.001) },
  backlash: { most: 0.05, asDelivered: inches(0) },
} as const;

type Kept = Readonly<Record<string, string>>;

function thin<K extends keyof typeof THIN>(kept: Kept, name: K): Length | (typeof THIN)[K]['asDelivered'] {
  const { most, asDelivered } = THIN[name];
  const text = kept[name];
  const found = text === undefined ? null : readLength(text, name, 'in', { least: 0, most });
  return found?.ok ? found.value.length : asDelivered;
}

const conventionIn = (kept: Kept): Convention => CONVENTIONS.find((one) => one === kept['convention']) ?? 'low end';
const unitIn = (kept: Kept): LengthUnit | null => (['in', 'mm'] as const).find((one) => one === kept['unit']) ?? null;

/** The machine that the owner named for this work, while it is here; else the first of its kind. */
function usual(all: readonly Machine[], kind: MachineKind, named: string | undefined): Machine | null {
  const kindred = all.filter((machine) => machine.kind === kind);
  return kindred.find((machine) => String(machine.id) === named) ?? kindred[0] ?? null;
}

const ofKind = <K extends AnyTool['kind']>(tools: readonly AnyTool[], kind: K) =>
  tools.filter((tool): tool is Extract<AnyTool, { kind: K }> => tool.kind === kind);

type Usual = { readonly lathe: Machine | null; readonly mill: Machine | null };

function usualOf(kept: Kept, all: readonly Machine[]): Usual {
  return { lathe: usual(all, 'lathe', kept['usual lathe']), mill: usual(all, 'mill', kept['usual mill']) };
}

/** The lathe and the mill that work is planned on, among the shop's machines. */
export const usualAmong = async (db: Executor, all: readonly Machine[]): Promise<Usual> => usualOf(await settings(db), all);

/** The shop as it stands: tools, machines and the owner's defaults, as lib takes them. */
export const shopNow = untilChanged(async (db: Executor): Promise<ShopNow> => {
  const [kept, tools] = [await settings(db), await allTools(db)];
  const all = (await machines(db)).map(({ machine }) => machine);
  const mounted = await mountedNow(db);
  return {
    cutters: ofKind(tools, 'cutter'),
    plates: ofKind(tools, 'plate'),
    heads: ofKind(tools, 'head'),
    mandrels: ofKind(tools, 'mandrel'),
    arbors: ofKind(tools, 'arbor'),
    chucks: ofKind(tools, 'chuck'),
    others: ofKind(tools, 'other'),
    ...usualOf(kept, all),
    convention: conventionIn(kept),
    cleanUp: thin(kept, 'cleanUp'),
    paper: thin(kept, 'paper'),
    unit: unitIn(kept),
    ...(mounted ? { mounted } : {}),
  };
});

/** The thinning that a new wheel is cut with, unless its part says otherwise. */
export const backlashNow = async (db: Executor): Promise<Length> => thin(await settings(db), 'backlash');
