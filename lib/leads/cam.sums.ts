import { DomainError } from '../figure/domain-error.ts';
import type { Answer, AnswerTable, Caution, Figure } from '../figure/figure.ts';
import { greatestBelow } from '../trains/greatest-below.ts';
import type { Train } from '../trains/nearest.ts';
import { trainWords } from '../trains/train-words.ts';
import { radians, toDegrees } from '../values/angle.ts';
import { printNumber } from '../values/print.ts';
import { type Ratio, toNumber } from '../values/ratio.ts';
import { headTilt, lobeLead, MOST_TILT_DEGREES } from './lead.formulas.ts';
import { LEAST_POWER_LEAD_IN, type LeadMachine, leadOfTrain, machineLeadOf } from './lead-trains.ts';

const TREATISE = 'Brown & Sharpe Mfg. Co., Practical Treatise on Milling and Milling Machines, scan pages 186 to 188 and 255';

/** A lobe: how much it rises, in inches, and over how many hundredths of a turn. */
export type Lobe = { readonly rise: number; readonly hundredths: number };
export type CamKey = 'longest' | 'geared' | 'train' | 'tilt' | 'vertical';
export type CamAsked = { readonly lobes: readonly Lobe[]; readonly machine: LeadMachine; readonly wheels: readonly number[] };

const leadOfLobe = ({ rise, hundredths }: Lobe): number => lobeLead(rise, hundredths / 100);
const figure = (name: string, symbol: string, value: Figure['value'], formula = '', given: Figure['given'] = []): Figure => ({
  name,
  symbol,
  value,
  unit: 'in',
  formula,
  source: TREATISE,
  given,
});
const inch = (number: number, places: number) => ({ number, unit: 'in', places });

type Geared = { readonly lead: number; readonly ratio: Ratio; readonly train: Train };

/** The shortest lead of two or four wheels that is no shorter than this: a longer lead is a smaller ratio. */
function noShorterThan(least: number, { wheels, machine }: Omit<CamAsked, 'lobes'>): Geared | null {
  const [one] = ([2, 4] as const)
    .flatMap((wheelsInTrain) => greatestBelow(wheels, wheelsInTrain, toNumber(machineLeadOf(machine)) / least) ?? [])
    .map(({ ratio, train }) => ({ ratio, train, lead: toNumber(leadOfTrain(ratio, machine)) }))
    .sort((a, b) => a.lead - b.lead);
  return one ?? null;
}

/**
 * The shortest lead that lets the head stand no steeper than may be for any lobe; else the shortest that is as long as the longest lobe's.
 * The nearer the head is to upright, the shorter the cutter may be, for the work runs less far along it.
 */
const gearedLead = (longest: number, asked: Omit<CamAsked, 'lobes'>): Geared | null =>
  noShorterThan(longest / Math.sin((MOST_TILT_DEGREES * Math.PI) / 180), asked) ?? noShorterThan(longest, asked);

/**
 * Milling the lobes of a cam (or a scroll) with the head tilted, all from one set of wheels.
 * Throws DomainError where no train gives a lead as long as the lobe's. Example: 2.443 in 29 hundredths: 8.424 in.
 */
export function camAnswer(asked: CamAsked): Answer<CamKey> {
  const longest = [...asked.lobes].sort((a, b) => leadOfLobe(b) - leadOfLobe(a))[0] as Lobe;
  const l = leadOfLobe(longest);
  const geared = gearedLead(l, asked);
  if (!geared) throw tooLong(l);
  const G = geared.lead;
  const tilt = headTilt(Math.min(l, G), G) ?? Math.PI / 2;
  const gears = { ...inch(G, 6) };
  return {
    figures: {
      longest: figure('Longest lead of a lobe', 'l', inch(l, 4), 'h ÷ (q ÷ 100)', [
        { symbol: 'h', name: 'rise', value: inch(longest.rise, 4), from: 'typed' },
        { symbol: 'q', name: 'hundredths of a turn', value: { number: longest.hundredths, unit: '', places: 3 }, from: 'typed' },
      ]),
      geared: figure('Lead to gear the head for', 'G', inch(G, 4)),
      train: figure('Wheels: drivers ÷ driven', 'T', { ratio: geared.ratio }),
      tilt: figure('Head tilted from level, longest lobe', 'a', { angle: radians(tilt) }, 'asin(min(1, l ÷ G))', [
        { symbol: 'l', name: 'lead of the lobe', value: inch(l, 8), from: 'worked out' },
        { symbol: 'G', name: 'geared lead', value: { ...gears, places: 8 }, from: 'worked out' },
      ]),
      vertical: figure('Vertical attachment from upright', 'v', { angle: radians(Math.PI / 2 - tilt) }, '90° − asin(min(1, l ÷ G))', [
        { symbol: 'l', name: 'lead of the lobe', value: inch(l, 8), from: 'worked out' },
        { symbol: 'G', name: 'geared lead', value: { ...gears, places: 8 }, from: 'worked out' },
      ]),
    },
    cautions: cautionsFor(tilt, G),
    says: `Gear for ${printNumber(G, 4)} in: ${trainWords(geared.train)}. Tilt the head for each lobe as below; the cutter stands parallel to the spindle of the head.`,
    tables: [lobesTable(asked.lobes, G)],
  };
}

const lobesTable = (lobes: readonly Lobe[], G: number): AnswerTable => ({
  title: 'Lobe by lobe',
  unit: 'in',
  heads: ['rise', 'hundredths', 'lead', 'head', 'vertical attachment'],
  rows: lobes.map((lobe) => {
    const l = leadOfLobe(lobe);
    const tilt = headTilt(Math.min(l, G), G) ?? Math.PI / 2;
    return [
      inch(lobe.rise, 3),
      printNumber(lobe.hundredths, 1),
      inch(l, 4),
      { angle: radians(tilt) },
      { angle: radians(Math.PI / 2 - tilt) },
    ];
  }),
});

function cautionsFor(tilt: number, G: number): Caution[] {
  const steep = toDegrees(radians(tilt)) > MOST_TILT_DEGREES;
  return [
    { name: 'Set over', says: 'Start at the low end of the lobe, so that the cut cannot run away; spindle clamp off.', weight: 'beware' },
    ...(steep
      ? [
          {
            name: 'Steep',
            says: `Above ${MOST_TILT_DEGREES}° a little of the angle is much of the lead: gear for a longer one if the wheels allow.`,
            weight: 'beware',
            about: 'tilt',
          } as const,
        ]
      : []),
    ...(G < LEAST_POWER_LEAD_IN
      ? [
          {
            name: 'Feed',
            says: `Geared under ${LEAST_POWER_LEAD_IN} in: feed by the index crank, never by power.`,
            weight: 'danger',
            about: 'geared',
          } as const,
        ]
      : []),
  ];
}

const tooLong = (l: number): DomainError =>
  new DomainError({
    given: `A lobe with a lead of ${printNumber(l, 3)} in.`,
    limit: 'No two or four of these wheels gear the head for a lead as long.',
    tryThis: 'Add wheels to the drawer, or split the lobe.',
    about: ['lobes'],
  });
