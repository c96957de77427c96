import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure, Given, Value } from '../figure/figure.ts';
import { givenLength } from '../figure/given-length.ts';
import { printValue } from '../figure/print-value.ts';
import type { Material } from '../gears/gear.ts';
import { inches, inUnit, type Length, type LengthUnit, ofUnit, toInches } from '../values/length.ts';
import { printNumber, printWhole } from '../values/print.ts';
import { type Reading, readingFahrenheit, readingInFahrenheit, riseFahrenheit, warmer } from '../values/temperature.ts';
import { allowance, dropRoom, fitPressure, hoopStress, rise } from './shrink.formulas.ts';
import { CEILING_F, DROP_ROOM, OLDER_RULES, SHOP_F, SHRINK_METALS, type ShrinkMetal } from './shrink-materials.data.ts';

/**
 * hub: diameter of the turned hub. hubMeasured: true once it stands on the lathe and was measured. ringOutside: outside of the ring's
 * solid part, its tooth roots. hubBore: 0 when solid. allowancePerInch and strength stand over the table when typed.
 * ceiling: a hotter oven than 450 °F, with the owner's reason.
 */
export type ShrinkAsked = {
  readonly hub: Length;
  readonly hubMeasured: boolean;
  readonly ringOutside: Length;
  readonly hubBore: Length;
  readonly ring: Material;
  readonly hubMaterial: Material;
  readonly unit: LengthUnit;
  readonly shop?: Reading;
  readonly allowancePerInch?: number;
  readonly strength?: number;
  readonly ceiling?: { readonly reading: Reading; readonly why: string };
};

type ShrinkKeys = 'allowance' | 'ringBore' | 'dropRoom' | 'rise' | 'oven' | 'hoopStress';
export type ShrinkFit = { readonly accepted: boolean; readonly reasons: readonly string[]; readonly answer: Answer<ShrinkKeys> };

const number = (x: number, places: number, unit = ''): Value => ({ number: x, unit, places });

function metal(material: Material, of: 'ring' | 'hub'): ShrinkMetal {
  const found = SHRINK_METALS[material];
  if (found) return found;
  throw new DomainError({
    given: material === 'unknown' ? `Nobody has said what the ${of} is made of.` : `The ${of} is of ${material}.`,
    limit: 'Zinc and phenolic take no heat and no shrink fit, and an unknown metal may be either.',
    tryThis: material === 'unknown' ? 'Find out the material first.' : 'Make the whole wheel from stock instead.',
    about: [of],
  });
}

function checkSizes({ hub, ringOutside, hubBore, unit }: ShrinkAsked): void {
  if (hubBore >= 0 && hubBore < hub && hub < ringOutside) return;
  const says = (size: Length) => `${printValue({ length: size }, unit).text} ${unit}`;
  throw new DomainError({
    given: `Bore ${says(hubBore)}, hub ${says(hub)}, ring to ${says(ringOutside)}.`,
    limit: 'The hub has to be larger than its bore, and the ring larger than the hub.',
    tryThis: 'Measure all three again.',
    about: ['hub', 'ringOutside', 'hubBore'],
  });
}

function allowanceOf(asked: ShrinkAsked, ring: ShrinkMetal): number {
  const b = asked.allowancePerInch ?? ring.allowance;
  if (b !== null && b > 0 && b <= 0.003) return b;
  throw new DomainError({
    given: b === null ? `A ring of ${asked.ring}.` : `An allowance of ${b} per inch.`,
    limit: b === null ? 'No allowance for it is on record.' : 'An allowance is above 0 and not above 0.003 per inch.',
    tryThis: 'Type the allowance per inch from its maker.',
    about: ['allowancePerInch'],
  });
}

/** The givens that the figures share, each under its symbol. */
function givensOf(asked: ShrinkAsked, b: number, ring: ShrinkMetal, hub: ShrinkMetal): Readonly<Record<string, Given>> {
  const typed = asked.allowancePerInch === undefined ? ('table' as const) : ('typed' as const);
  const size = (symbol: string, name: string, length: Length, from: Given['from']): Given =>
    givenLength(symbol, name, length, asked.unit, from);
  const table = (symbol: string, name: string, value: Value, where: string): Given => ({ symbol, name, value, from: 'table', where });
  return {
    D: size('D', 'hub diameter', asked.hub, asked.hubMeasured ? 'measured' : 'worked out'),
    b: { symbol: 'b', name: 'allowance per inch', value: number(b, 5), from: typed, where: ring.source },
    r: table('r', 'room for dropping per inch', number(DROP_ROOM.perInch, 4), 'judgement'),
    g: table('g', 'least room', { length: inches(DROP_ROOM.leastIn) }, 'judgement'),
    x: table('x', `expansion of ${asked.ring}`, number(ring.expansion, 1, 'millionths per °F'), ring.source),
    W: size('W', 'ring to its tooth roots', asked.ringOutside, 'worked out'),
    d: size('d', 'bore of the hub', asked.hubBore, 'measured'),
    Er: table('Er', 'stiffness of the ring', number(ring.stiffness, 1, 'million lb/in²'), ring.source),
    Eh: table('Eh', 'stiffness of the hub', number(hub.stiffness, 1, 'million lb/in²'), hub.source),
    vr: table('vr', 'Poisson’s ratio of the ring', number(ring.poisson, 2), ring.source),
    vh: table('vh', 'Poisson’s ratio of the hub', number(hub.poisson, 2), hub.source),
  };
}

const CR = '(W^2 + D^2) ÷ (W^2 − D^2)';
const CH = '(D^2 + d^2) ÷ (D^2 − d^2)';
const HEAT = 'Assembly of shrink fits (engineeringtoolbox.com/assembly-shrink-fits-d_951.html); room for dropping: judgement';
const LAME = 'Lamé’s thick cylinders, S. Timoshenko, Strength of Materials part II (value from memory)';

type Worked = { readonly i: number; readonly f: number; readonly degF: number; readonly stress: number; readonly oven: Reading };

function workOut(asked: ShrinkAsked, b: number, ring: ShrinkMetal, hub: ShrinkMetal): Worked {
  const inUnitOf = (length: Length) => inUnit(length, asked.unit);
  const [D, Do, d] = [inUnitOf(asked.hub), inUnitOf(asked.ringOutside), inUnitOf(asked.hubBore)];
  const i = allowance(b, D);
  const f = dropRoom(DROP_ROOM.perInch, D, inUnitOf(inches(DROP_ROOM.leastIn)));
  const degF = rise(i, f, ring.expansion / 1e6, D);
  const [Er, Eh] = [ring.stiffness * 1e6, hub.stiffness * 1e6];
  const p = fitPressure(i, D, Do, d, { E: Er, v: ring.poisson }, { E: Eh, v: hub.poisson });
  const shop = asked.shop ?? readingFahrenheit(SHOP_F);
  return { i, f, degF, stress: hoopStress(p, Do, D), oven: warmer(shop, riseFahrenheit(degF)) };
}

type Givens = Readonly<Record<string, Given>>;
type Shape = Pick<Figure, 'name' | 'symbol' | 'value' | 'formula' | 'source'> & { readonly places?: number };

const RISE = '(b × D + max(r × D, g)) × 1000000 ÷ (x × D)';
const HOOP = `1000 × b × (${CR}) ÷ (((${CR}) + vr) ÷ Er + ((${CH}) − vh) ÷ Eh)`;

/** A figure with those givens, of all that there are, whose symbols are named. */
const figure = (unit: LengthUnit, given: Givens, symbols: string, shape: Shape): Figure => ({
  ...shape,
  unit,
  given: symbols.split(' ').flatMap((symbol) => given[symbol] ?? []),
});

function sizeFigures(
  { unit, hub }: ShrinkAsked,
  { i, f }: Worked,
  given: Givens,
): Pick<Record<ShrinkKeys, Figure>, 'allowance' | 'ringBore' | 'dropRoom'> {
  const length = (size: number): Value => ({ length: ofUnit(size, unit) });
  const source = given['b']?.where ?? '';
  const places = unit === 'in' ? 5 : 4;
  const bore = length(inUnit(hub, unit) - i);
  return {
    allowance: figure(unit, given, 'b D', { name: 'Allowance', symbol: 'i', value: length(i), places, formula: 'b × D', source }),
    ringBore: figure(unit, given, 'D b', { name: 'Ring bore', symbol: 'B', value: bore, formula: 'D − b × D', source }),
    dropRoom: figure(unit, given, 'r D g', {
      name: 'Room for dropping',
      symbol: 'f',
      value: length(f),
      places,
      formula: 'max(r × D, g)',
      source: 'judgement',
    }),
  };
}

function heatFigures(
  { unit, shop }: ShrinkAsked,
  worked: Worked,
  given: Givens,
): Pick<Record<ShrinkKeys, Figure>, 'rise' | 'oven' | 'hoopStress'> {
  const t: Given = {
    symbol: 't',
    name: 'hub, as the shop',
    value: number(readingInFahrenheit(shop ?? readingFahrenheit(SHOP_F)), 0, '°F'),
    from: shop === undefined ? 'guess' : 'measured',
  };
  const rises = { name: 'Ring warmer than the hub by', symbol: 'H', formula: RISE, source: HEAT };
  const stands = { name: 'Oven', symbol: 'V', formula: `t + ${RISE}`, source: HEAT };
  const stress = number(worked.stress / 1000, 1, 'thousand lb/in²');
  return {
    rise: figure(unit, given, 'b D r g x', { ...rises, value: { rise: riseFahrenheit(worked.degF) } }),
    oven: figure(unit, { ...given, t }, 't b D r g x', { ...stands, value: { reading: worked.oven } }),
    hoopStress: figure(unit, given, 'b W D vr Er d vh Eh', {
      name: 'Hoop stress in the ring',
      symbol: 's',
      value: stress,
      formula: HOOP,
      source: LAME,
    }),
  };
}

const thousands = (x: number): string => `${printNumber(x / 1000, 1)} thousand lb/in²`;

function refusals(asked: ShrinkAsked, ring: ShrinkMetal, { stress, oven }: Worked): string[] {
  const may = ((asked.strength ?? ring.strength) * ring.share[0]) / ring.share[1];
  const ceiling = asked.ceiling?.why.trim() ? asked.ceiling.reading : readingFahrenheit(CEILING_F);
  const share = ring.strengthIs === 'yield' ? 'two thirds of yield' : 'a quarter of its strength';
  const says: string[] = [];
  if (stress > may) says.push(`Hoop stress ${thousands(stress)} is above ${share} of ${asked.ring}, ${thousands(may)}.`);
  const shown = (reading: Reading) => `${printWhole(reading, 1000, 0)} °F (${printValue({ reading }, 'in').other})`;
  if (oven > ceiling)
    says.push(
      `The oven would stand at ${shown(oven)}, above the ceiling of ${shown(ceiling)}: type why before going hotter, or chill the hub.`,
    );
  return says;
}

const CAUTIONS: readonly Caution[] = [
  {
    name: 'Shrink fit',
    says: 'Oven rather than torch; clean of oil; nothing plated, zinc or sealed hollow; drop, do not hammer; leave it alone until cold.',
    weight: 'danger',
    about: 'oven',
  },
  {
    name: 'Dry run',
    says: 'Make the lead and the stop, and go through every move cold, before the ring is hot.',
    weight: 'beware',
    about: 'oven',
  },
];

function cautionsOf(asked: ShrinkAsked, ring: ShrinkMetal): Caution[] {
  const says = (name: string, text: string, about: ShrinkKeys): Caution => ({ name, says: text, weight: 'beware', about });
  const first = says('Hub first', 'Turn the hub and measure it; then bore the ring to the hub that was measured.', 'ringBore');
  const mild = says(
    'Which steel',
    `Strength is taken as ${printNumber(ring.strength, 0)} lb/in² of yield: soft hot-rolled bar has less. Type the yield of the bar in hand.`,
    'hoopStress',
  );
  const asksStrength = asked.ring === 'steel' && asked.strength === undefined;
  return [...(asked.hubMeasured ? [] : [first]), ...(asksStrength ? [mild] : []), ...CAUTIONS];
}

function olderRules(asked: ShrinkAsked): AnswerTable {
  const row = (rule: (typeof OLDER_RULES)[number]): (Value | string)[] => [
    rule.name,
    { length: inches((rule.base + rule.perInch * toInches(asked.hub)) / 1000) },
    rule.source,
  ];
  return { title: 'What older rules give', unit: asked.unit, heads: ['Rule', 'Allowance', 'Source'], rows: OLDER_RULES.map(row) };
}

/** A ring shrunk on a hub: bore, heat and stress, each with its working, and whether it may be done. Throws DomainError. */
export function shrinkFit(asked: ShrinkAsked): ShrinkFit {
  const [ring, hub] = [metal(asked.ring, 'ring'), metal(asked.hubMaterial, 'hub')];
  checkSizes(asked);
  const b = allowanceOf(asked, ring);
  const worked = workOut(asked, b, ring, hub);
  const reasons = refusals(asked, ring, worked);
  const given = givensOf(asked, b, ring, hub);
  const figures = { ...sizeFigures(asked, worked, given), ...heatFigures(asked, worked, given) };
  const says = reasons.length === 0 ? 'The ring may be shrunk on.' : reasons.join(' ');
  return {
    accepted: reasons.length === 0,
    reasons,
    answer: { figures, cautions: cautionsOf(asked, ring), says, tables: [olderRules(asked)] },
  };
}
