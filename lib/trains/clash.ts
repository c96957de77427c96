import { toMm } from '../values/length.ts';
import { FREE } from './quadrant.ts';

/** A wheel in its plane on its shaft; its outside radius in millimetres. */
export type PlacedWheel = { readonly teeth: number; readonly outside: number; readonly shaft: number; readonly plane: number };
export type Middle = { readonly x: number; readonly y: number };

type Between = { readonly collar: number; readonly planes: readonly number[] };
const FREE_MM = toMm(FREE);

const apartOf = (a: Middle, b: Middle): number => Math.hypot(a.x - b.x, a.y - b.y);

/**
 * What stands in the way, in words, or null: in each plane no wheel meets another shaft's wheel that it does not mesh with, nor the
 * collar of a shaft that has no wheel in that plane; 0.010 in stays free. planes: of each mesh; collar: its diameter in millimetres.
 */
export function clash(
  wheels: readonly PlacedWheel[],
  middles: readonly Middle[],
  names: readonly string[],
  { collar, planes }: Between,
): string | null {
  for (const wheel of wheels)
    for (const [shaft, middle] of middles.entries()) {
      if (shaft === wheel.shaft) continue;
      const other = wheels.find((one) => one.shaft === shaft && one.plane === wheel.plane);
      if (Math.abs(shaft - wheel.shaft) === 1 && planes[Math.min(shaft, wheel.shaft)] === wheel.plane) continue;
      const need = wheel.outside + (other ? other.outside : collar / 2) + FREE_MM;
      const there = apartOf(middles[wheel.shaft] as Middle, middle);
      if (there < need) return `The ${wheel.teeth} meets the ${other ? other.teeth : 'collar'} on the ${names[shaft]}.`;
    }
  return null;
}

/** Every way of choosing the planes: behind an idler the plane stays, behind a pair on one stud it is the next one out or in. */
export function planeChoices(idlers: readonly boolean[], abreast: number): number[][] {
  let choices: number[][] = [[0]];
  for (const idler of idlers)
    choices = choices.flatMap((planes) => {
      const last = planes.at(-1) as number;
      return (idler ? [last] : [last + 1, last - 1]).filter((plane) => plane >= 0 && plane < abreast).map((plane) => [...planes, plane]);
    });
  return choices;
}
