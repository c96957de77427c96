import { readPitch } from '../../../lib/gears/pitch.ts';
import { moduleOf, unitOfPitch } from '../../../lib/gears/tooth.ts';
import type { Boxes } from './random-inputs.ts';

/** Choices that follow from the boxes already drawn, so that a failing draw is the same when it is shrunk. */
const drawnFrom = (boxes: Boxes): number => Number(boxes['teeth']) * 7 + Number(boxes['mate'] ?? boxes['pinion'] ?? 3) * 13;
const one = (of: readonly string[], at: number): string => of[at % of.length] ?? '';

const HELICES = ['', '', '', '0', '8', '15', `22°30'`, '25', '30', '45'];
const SHIFTS = ['', '', '0', '0.1', '0.4', '-0.1', '0.25', '0.5', '-0.3', '1/3'];

const leaning = (boxes: Boxes, at: number): Boxes => ({
  ...boxes,
  ...('helix' in boxes ? { helix: one(HELICES, at) } : {}),
  ...('shift' in boxes ? { shift: one(SHIFTS, at + 3) } : {}),
  ...('mateShift' in boxes ? { mateShift: one(SHIFTS, at + 5) } : {}),
});

/** Modules as a length that may be typed. */
function typed(boxes: Boxes, modules: number): string {
  const pitch = readPitch(boxes['pitch'] ?? '');
  if (!pitch.ok) throw new Error('no pitch');
  return `${(Math.abs(modules) * moduleOf(pitch.value)).toFixed(4)} ${unitOfPitch(pitch.value)}`;
}

const cosHelix = (boxes: Boxes): number => {
  const deg = boxes['helix'] === `22°30'` ? 22.5 : Number(boxes['helix'] ?? 0);
  return boxes['plane'] === 'transverse' ? 1 : Math.cos((deg * Math.PI) / 180);
};

function pair(boxes: Boxes): Boxes {
  const at = drawnFrom(boxes);
  const leans = leaning(boxes, at);
  const [n, mate] = [Number(boxes['teeth']), Number(boxes['mate'])];
  const ring = boxes['mateIs'] === 'ring';
  const other = ring && at % 5 > 0 ? n + 12 + (mate % 60) : mate;
  const standard = (ring ? other - n : other + n) / 2 / cosHelix(leans);
  const centre = boxes['centre'] && boxes['mateIs'] !== 'rack' ? typed(boxes, standard + ((at % 9) - 3) * 0.1) : '';
  const bothKnown = centre !== '' && at % 4 > 0;
  return { ...leans, mate: `${other}`, centre, ...(bothKnown ? { mateShift: '' } : {}) };
}

function internal(boxes: Boxes): Boxes {
  const at = drawnFrom(boxes);
  const teeth = Number(boxes['teeth']);
  const pinion = boxes['pinion'] ? Math.max(8, Math.round(teeth * 0.6)) : 0;
  const ring = at % 6 === 0 ? teeth : Math.max(teeth, 30);
  const leans = {
    ...leaning(boxes, at),
    teeth: `${ring}`,
    pinion: pinion ? `${Math.max(4, Math.min(pinion, at % 7 === 0 ? ring + 1 : ring - 10))}` : '',
  };
  return { ...leans, centre: '' };
}

function pins(boxes: Boxes): Boxes {
  const at = drawnFrom(boxes);
  const leans = leaning(boxes, at);
  const pin = at % 3 === 0 ? typed(boxes, 1.5 + (at % 6) * 0.1) : '';
  return {
    ...leans,
    pin,
    reading: boxes['reading'] && at % 2 === 0 ? typed(boxes, (Number(boxes['teeth']) / cosHelix(leans)) * 1.0 + 2.4) : '',
  };
}

/** What has to go together in the boxes of gears on parallel shafts. */
export const TOGETHER_PARALLEL: Readonly<Record<string, (boxes: Boxes) => Boxes>> = {
  'gear-pair': pair,
  'contact-ratio': pair,
  'helical-gear': (boxes) => ({ ...leaning(boxes, drawnFrom(boxes)), helix: one(HELICES.slice(3), drawnFrom(boxes)) }),
  'profile-shift': (boxes) => ({
    ...leaning(boxes, drawnFrom(boxes)),
    thickness: boxes['thickness'] ? typed(boxes, 1.2 + (drawnFrom(boxes) % 8) * 0.1) : '',
  }),
  undercut: (boxes) => leaning(boxes, drawnFrom(boxes)),
  'internal-gear': internal,
  'over-pins': pins,
  'between-pins': pins,
};
