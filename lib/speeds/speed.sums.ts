import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, From, Given } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import type { Material } from '../gears/gear.ts';
import type { Chuck, CutterSteel } from '../tooling/tooling.ts';
import { inUnit, type Length, type LengthUnit } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import { chuckLimit, chuckLimitFigure } from './chuck-limit.ts';
import {
  highestNotAbove,
  lowestOf,
  METRES_PER_FOOT,
  speedFromFeet,
  speedFromMetres,
  surfaceFeet,
  surfaceMetres,
} from './speed.formulas.ts';
import { type Cut, surfaceSpeed } from './surface-speed.ts';

/** Either a typed surface speed, which is taken as it stands, or what is cut with what. */
export type WantedSpeed =
  | { readonly surfaceSpeedFtPerMin: number }
  | { readonly material: Material; readonly steel: CutterSteel; readonly cut: Cut };

/** diameter: of the work when turning, of the cutter when milling. offCentre: work off-centre, or jaws out past the body. */
export type SpeedAsked = WantedSpeed & {
  readonly diameter: Length;
  readonly machine: { readonly name: string; readonly speedsRpm: readonly number[] };
  readonly chuck?: Pick<Chuck, 'name' | 'diameter' | 'topSpeedRpm'> | null;
  readonly offCentre?: boolean;
  readonly unit?: LengthUnit;
};

export type SpeedKey = 'computedSpeed' | 'offeredSpeed' | 'surfaceSpeedAtOffered' | 'chuckLimit';

type Wanted = { readonly ftPerMin: number; readonly slower: number; readonly from: From; readonly source: string; readonly why: string };

function wantedOf(asked: SpeedAsked): Wanted {
  if ('surfaceSpeedFtPerMin' in asked)
    return { ftPerMin: asked.surfaceSpeedFtPerMin, slower: 1, from: 'typed', source: 'surface speed as typed', why: '' };
  return { ...surfaceSpeed(asked.material, asked.steel, asked.cut), from: 'table' };
}

function checked(asked: SpeedAsked, wanted: Wanted): void {
  if (asked.diameter > 0 && wanted.ftPerMin > 0 && Number.isFinite(wanted.ftPerMin)) return;
  throw new DomainError({
    given: `The diameter is ${printShort(inUnit(asked.diameter, 'in'))} in and the surface speed ${wanted.ftPerMin} ft/min.`,
    limit: 'Both have to be above 0.',
    tryThis: 'Measure the work (turning) or the cutter (milling).',
    about: ['diameter', 'surfaceSpeedFtPerMin'],
  });
}

const perMinute = (n: number, places = 1) => ({ number: n, unit: 'rev/min', places });

function computedFigure(asked: SpeedAsked, wanted: Wanted, unit: LengthUnit): Figure {
  const D = inUnit(asked.diameter, unit);
  const v = unit === 'in' ? wanted.ftPerMin : wanted.ftPerMin * METRES_PER_FOOT;
  const n = (unit === 'in' ? speedFromFeet(v, D) : speedFromMetres(v, D)) / wanted.slower;
  const per = unit === 'in' ? 12 : 1000;
  const slow: Given = { symbol: 's', name: wanted.why, value: { number: wanted.slower, unit: '', places: 1 }, from: 'guess' };
  return {
    name: 'Speed worked out',
    symbol: 'n',
    value: perMinute(n),
    unit,
    formula: wanted.slower === 1 ? `${per} × v ÷ (π × D)` : `${per} × v ÷ (s × π × D)`,
    source: 'Jones, Turning and Boring, 1914, "Rules for calculating cutting speeds"',
    given: [
      {
        symbol: 'v',
        name: 'surface speed',
        value: { number: v, unit: unit === 'in' ? 'ft/min' : 'm/min', places: Number.isInteger(v * 10) ? 1 : 4 },
        from: wanted.from,
        where: wanted.source,
      },
      givenLength('D', 'diameter at the cut', asked.diameter, unit, 'typed'),
      ...(wanted.slower === 1 ? [] : [slow]),
    ],
  };
}

type Choice = { readonly offered: number | null; readonly lowest: number | null; readonly limit: number; readonly byChuck: boolean };

function offeredFigure(asked: SpeedAsked, { offered, lowest, limit, byChuck }: Choice, unit: LengthUnit): Figure {
  const says =
    lowest === null ? 'none: no speeds are known for this machine' : `none low enough: the lowest is ${printShort(lowest, 1)} rev/min`;
  const has = [...asked.machine.speedsRpm].sort((a, b) => a - b).map((n) => printShort(n, 1));
  const over = offered === null && lowest !== null ? { error: perMinute(lowest - limit) } : {};
  return {
    name: 'Speed to set',
    symbol: 'no',
    value: offered === null ? { words: says } : perMinute(offered, Number.isInteger(offered) ? 0 : 1),
    unit,
    formula: '',
    source: 'Army subcourse OD1645, Lathe Operations, p. 52: the next slower speed that the lathe has',
    given: [],
    ...over,
    note: `${asked.machine.name} has ${has.join(', ') || 'no speeds on record'} rev/min; the highest not above ${printShort(limit, 1)}${byChuck ? ', which the chuck allows' : ''}.`,
  };
}

function surfaceFigure(asked: SpeedAsked, { offered, lowest }: Choice, unit: LengthUnit): Figure {
  const n = offered ?? lowest;
  const words = unit === 'in' ? 'ft/min' : 'm/min';
  const base = {
    name: 'Surface speed at that',
    symbol: 'vo',
    unit,
    source: 'Jones, Turning and Boring, 1914, "Rules for calculating cutting speeds"',
  };
  if (n === null) return { ...base, value: { words: 'none: no speed to set' }, formula: '', given: [] };
  const D = inUnit(asked.diameter, unit);
  return {
    ...base,
    value: { number: unit === 'in' ? surfaceFeet(n, D) : surfaceMetres(n, D), unit: words, places: 1 },
    formula: `π × D × n ÷ ${unit === 'in' ? 12 : 1000}`,
    given: [
      givenLength('D', 'diameter at the cut', asked.diameter, unit, 'typed'),
      { symbol: 'n', name: offered === null ? 'lowest speed of the machine' : 'speed to set', value: perMinute(n, 2), from: 'table' },
    ],
  };
}

function cautionsOf(asked: SpeedAsked, { offered, lowest, limit, byChuck }: Choice): Caution[] {
  const about = 'offeredSpeed';
  if (lowest === null) return [{ name: 'no speeds known', says: 'Type in the speeds of this machine first.', weight: 'beware', about }];
  if (offered !== null) return [];
  const over = printShort(lowest - limit, 1);
  const tries = byChuck
    ? 'Do not run it so: use a smaller chuck, a faceplate or a mandrel between centres.'
    : 'Try the back gear, another machine, a harder tool steel, or turn the spindle by hand.';
  const says = `The lowest speed of ${asked.machine.name} is ${printShort(lowest, 1)} rev/min, ${over} over. ${tries}`;
  return [{ name: 'no speed low enough', says, weight: byChuck ? 'danger' : 'beware', about }];
}

/**
 * The speed to set: the highest that the machine has not above the one worked out, and never above the chuck's limit.
 * None low enough is said so, with the lowest there is and by how much it is over. Throws DomainError for sizes of 0 or less.
 */
export function offerSpeed(asked: SpeedAsked): Answer<SpeedKey> {
  const unit = asked.unit ?? 'in';
  const wanted = wantedOf(asked);
  checked(asked, wanted);
  const computedSpeed = computedFigure(asked, wanted, unit);
  const computed = speedFromFeet(wanted.ftPerMin / wanted.slower, inUnit(asked.diameter, 'in'));
  const allowed = chuckLimit(asked.chuck ?? null, asked.offCentre ?? false);
  const limit = Math.min(computed, allowed);
  const choice = {
    offered: highestNotAbove(asked.machine.speedsRpm, limit),
    lowest: lowestOf(asked.machine.speedsRpm),
    limit,
    byChuck: allowed < computed,
  };
  const figures = {
    computedSpeed,
    offeredSpeed: offeredFigure(asked, choice, unit),
    surfaceSpeedAtOffered: surfaceFigure(asked, choice, unit),
    chuckLimit: chuckLimitFigure(asked.chuck ?? null, asked.offCentre ?? false, unit),
  };
  const says =
    choice.offered === null
      ? `Exact: none. Worked out ${printShort(computed, 1)} rev/min; no speed is low enough.`
      : `Set ${printShort(choice.offered, 1)} rev/min; worked out ${printShort(computed, 1)}${choice.byChuck ? `, and the chuck allows ${printShort(allowed, 1)}` : ''}.`;
  return { figures, cautions: cautionsOf(asked, choice), says };
}
