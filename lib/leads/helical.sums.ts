import type { CutterChoice } from '../cutters/choice.ts';
import { chooseCutter } from '../cutters/choose.ts';
import { wantedFor } from '../cutters/wanted.ts';
import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution } from '../figure/figure.ts';
import type { Gear, Hand } from '../gears/gear.ts';
import { lead } from '../gears/helical.formulas.ts';
import { virtualTeeth } from '../gears/spur.formulas.ts';
import { moduleOf, unitOfPitch } from '../gears/tooth.ts';
import type { Cutter } from '../tooling/tooling.ts';
import type { Ranked } from '../trains/best-trains.ts';
import { wheelsFigure } from '../trains/change-gears.sums.ts';
import { waitsFor } from '../trains/nearer-with.ts';
import type { Train } from '../trains/nearest.ts';
import { millionths, trainWords, waitsWords } from '../trains/train-words.ts';
import type { Wanted } from '../trains/wanted.ts';
import { degrees, radians, toRadians } from '../values/angle.ts';
import { type Length, toInches } from '../values/length.ts';
import { printNumber, printShort } from '../values/print.ts';
import { type Ratio, ratio, toNumber } from '../values/ratio.ts';
import { errorAcrossFace } from './lead.formulas.ts';
import { driveCautions, figure, handCautions, inch, machineFigure, one, rowsTable, trainFigures } from './lead-figures.ts';
import { type LeadMachine, leadOfTrain, nearerLead, trainsForLead } from './lead-trains.ts';

export type HelicalKey = 'diameter' | 'lead' | 'machineLead' | 'wheels' | 'train' | 'cuts' | 'acrossFace' | 'swing' | 'virtual' | 'cutter';

export type HelicalAsked = {
  /** pitch: the normal pitch, the cutter's own. */
  readonly gear: Pick<Gear, 'teeth' | 'pitch' | 'system'>;
  readonly helix: number;
  readonly hand: Hand;
  readonly face: Length;
  readonly machine: LeadMachine;
  readonly wheels: readonly number[];
  readonly upTo: 2 | 4 | 6;
  /** Wheels missing from the set, any of which may be under way. */
  readonly missing?: readonly number[];
  /** Teeth of the mate on a parallel shaft, when it is to be cut too. */
  readonly mate?: number;
  readonly mounted?: Train;
  /** The cutters of the drawer, where the one to use is to be chosen. */
  readonly cutters?: readonly Cutter[];
};

/** The sizes that everything else follows from, inches. helix in radians. */
type Sizes = { readonly mn: number; readonly d: number; readonly L: number; readonly psi: number };

const noHelix = (helix: number): DomainError =>
  new DomainError({
    given: `A helix angle of ${printShort(helix)}°.`,
    limit: helix > 80 ? 'Beyond 80° it is a worm.' : 'Such teeth are straight: their lead has no end, and no wheels are needed.',
    tryThis: helix > 80 ? 'Type an angle from 0.1 to 80.' : 'Lock the head and cut straight along; else type an angle from 0.1 to 80.',
    about: ['helix'],
  });

function sizesOf({ gear, helix }: HelicalAsked): Sizes {
  if (!(helix >= 0.1 && helix <= 80)) throw noHelix(helix);
  const mn = moduleOf(gear.pitch) * (unitOfPitch(gear.pitch) === 'mm' ? 1 / 25.4 : 1);
  const psi = toRadians(degrees(helix));
  const d = (gear.teeth * mn) / Math.cos(psi);
  return { mn, d, L: lead(d, psi), psi };
}

/** A lead that is no thread of any chart: kept to a millionth of an inch. */
const asWanted = (L: number): Wanted => ({ says: `${printNumber(L, 4)} in`, size: ratio(Math.round(L * 1e6), 1_000_000), pi: 0 });

/** The trains to choose from, best first by the drift across the face. */
export function helicalTrains(asked: HelicalAsked): Ranked[] {
  const { wheels, upTo, mounted, machine } = asked;
  return trainsForLead(asWanted(sizesOf(asked).L), machine, { wheels, upTo, ...(mounted ? { mounted } : {}) });
}

/** The missing wheels that the job waits for, its trains of today given. */
export const helicalWaits = (asked: HelicalAsked, [best]: readonly Ranked[]): readonly number[] =>
  waitsFor(nearerLead(asWanted(sizesOf(asked).L), asked.machine, asked, best));

/**
 * Milling helical teeth: lead, wheels, table angle and which way, cutter by virtual count, drift across the face, and the mate.
 * Throws DomainError for straight teeth and for a lead beyond the wheels' reach by far. Example: 24 teeth, 8 DP normal, 30°: d 3.4641,
 * lead 18.8496; the cutter is for 36.95 teeth.
 */
export function helicalAnswer(asked: HelicalAsked, rows: readonly Ranked[] = helicalTrains(asked)): Answer<HelicalKey> {
  const sizes = sizesOf(asked);
  const [best] = rows;
  const chosen = chosenFor(asked);
  const job = { ...sizes, hand: asked.hand, face: asked.face, machine: asked.machine, wheels: asked.wheels };
  const figures = {
    ...(best ? { wheels: wheelsFigure(best) } : {}),
    ...sizeFigures(asked, sizes),
    ...cutterFigure(asked, chosen),
    ...(best ? trainFigures(best, job) : {}),
  } as Answer<HelicalKey>['figures'];
  return {
    figures,
    cautions: [
      ...handCautions(asked),
      ...driveCautions(job),
      ...(chosen?.cautions ?? []).map(({ about: _, ...caution }) => caution),
      ...mateCautions(asked, sizes, best),
    ],
    says: saysOf(asked, sizes, best),
    tables: [rowsTable(rows, job)],
  };
}

function sizeFigures({ gear, machine }: HelicalAsked, { mn, d, L, psi }: Sizes) {
  const angle = one('H', 'helix angle', { angle: radians(psi) });
  const source = 'US Navy, Machinery Repairman (14345), helical gears';
  const need = { pitch: gear.pitch, angle: gear.system.angle, teeth: virtualTeeth(gear.teeth, psi) };
  return {
    diameter: figure('Pitch diameter', 'd', inch(d), 'N × k ÷ cos(H)', source, [
      one('N', 'teeth', { count: gear.teeth }),
      one('k', 'module square to the tooth', inch(mn, 7)),
      angle,
    ]),
    lead: figure('Lead of the teeth', 'L', inch(L), 'π × d ÷ tan(H)', source, [
      one('d', 'pitch diameter', inch(d, 6), 'worked out'),
      angle,
    ]),
    machineLead: machineFigure(machine),
    virtual: figure(
      'Cutter goes by a count of',
      'V',
      { number: need.teeth, unit: 'teeth', places: 2 },
      'N ÷ cos(H)^3',
      source,
      [one('N', 'teeth', { count: gear.teeth }), angle],
      wantedFor(need).says,
    ),
  };
}

/** The cutter of the drawer by the virtual count; null where no drawer of cutters was given. */
function chosenFor({ gear, helix, hand, cutters }: HelicalAsked): CutterChoice | null {
  if (!cutters) return null;
  const leaning = { ...gear, helix: { angle: degrees(helix), hand } };
  return chooseCutter({ gear: leaning, cutters: cutters.map((cutter) => ({ ...cutter, hole: null })), arbors: [], convention: 'low end' });
}

function cutterFigure({ gear, helix }: HelicalAsked, chosen: CutterChoice | null) {
  if (!chosen) return {};
  const [used, second] = [chosen.right, chosen.second[0]];
  const teeth = printNumber(virtualTeeth(gear.teeth, toRadians(degrees(helix))), 2);
  const words = used ? used.cutter.name : second ? `none is right; in a pinch ${second.cutter.name}` : 'none of these';
  const source = `derived: the tooth range written down for each cutter against the virtual count, ${teeth}`;
  return { cutter: figure('Cutter from the drawer', '', { words }, '', source, [], (used ?? second)?.says ?? chosen.wanted?.says ?? '') };
}

/** The mate on a parallel shaft has the same helix and the other hand: equal errors of angle cancel, whichever lead they come from. */
function mateCautions(asked: HelicalAsked, { mn, psi }: Sizes, best: Ranked | undefined): Caution[] {
  const { mate, gear, machine, face } = asked;
  if (mate === undefined || !best) return [];
  if (mate === gear.teeth)
    return [
      {
        name: 'Mate',
        says: 'The mate has as many teeth: the same wheels with the other hand give it the same angle, and the drift cancels.',
        weight: 'note',
        about: 'acrossFace',
      },
    ];
  const d = (mate * mn) / Math.cos(psi);
  const [own] = trainsForLead(asWanted(lead(d, psi)), machine, { wheels: asked.wheels, upTo: asked.upTo });
  if (!own) return [];
  const cut = toNumber(leadOfTrain(best.near.ratio, machine));
  const other = toNumber(leadOfTrain(own.near.ratio, machine));
  const dMine = (gear.teeth * mn) / Math.cos(psi);
  const left = toInches(face) * Math.PI * (dMine / cut - d / other);
  return [
    {
      name: 'Mate',
      says: `The mate of ${mate} wants a lead of its own, ${printNumber(lead(d, psi), 4)} in, by ${trainWords(own.train)}: cut so, the two lie ${printNumber(Math.abs(left) * 1000, 3)} thousandths apart across the face. The same wheels would serve only a mate of ${gear.teeth}.`,
      weight: Math.abs(left) > 0.0005 ? 'beware' : 'note',
      about: 'acrossFace',
    },
  ];
}

function saysOf(asked: HelicalAsked, { d, L }: Sizes, best: Ranked | undefined): string {
  if (!best) return `Lead ${printNumber(L, 4)} in. The drawer gives no train at all: it holds fewer than two wheels.`;
  const { machine, face } = asked;
  const drift = (train: Ratio): string =>
    `${printNumber(1000 * errorAcrossFace(d, toInches(face), L, toNumber(leadOfTrain(train, machine))), 3)} thousandths across the face`;
  const waits = waitsWords(nearerLead(asWanted(L), machine, asked, best), drift);
  return `Lead ${printNumber(L, 4)} in: ${trainWords(best.train)}, ${best.near.error === 0 ? 'exact to a millionth of an inch' : millionths(best.near.error)}.${waits}`;
}
