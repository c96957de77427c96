import { toMm } from '../values/length.ts';
import { FREE } from './quadrant.ts';

/** A wheel in its plane on its shaft; its outside radius in millimetres. */
export type PlacedWheel = { readonly teeth: number; readonly outside: number; readonly shaft: number; readonly plane: number };
export type Middle = { readonly x: number; readonly y: number };

/** The wheels of a train in one choice of planes. in: the wheel of a shaft in a plane, by shaft × MOST_PLANES + plane. */
export type Placing = {
  readonly wheels: readonly PlacedWheel[];
  readonly in: readonly (PlacedWheel | undefined)[];
  readonly planes: readonly number[];
};

const MOST_PLANES = 3;
const FREE_MM = toMm(FREE);

/** planes: of each mesh. */
export function placing(wheels: readonly PlacedWheel[], planes: readonly number[]): Placing {
  const taken: (PlacedWheel | undefined)[] = new Array(MOST_PLANES * (planes.length + 1)).fill(undefined);
  for (const wheel of wheels) taken[wheel.shaft * MOST_PLANES + wheel.plane] = wheel;
  return { wheels, in: taken, planes };
}

const apartOf = (a: Middle, b: Middle): number => Math.sqrt((a.x - b.x) ** 2 + (a.y - b.y) ** 2);

/** The wheel, and what it meets on which shaft; other: undefined for the collar. */
export type Clash = { readonly wheel: PlacedWheel; readonly other: PlacedWheel | undefined; readonly shaft: number };

/**
 * What stands in the way, or null: in each plane no wheel meets another shaft's wheel that it does not mesh with, nor the collar of a
 * shaft that has no wheel in that plane; 0.010 in stays free. collar: its diameter in millimetres.
 */
export function clash({ wheels, in: taken, planes }: Placing, middles: readonly Middle[], collar: number): Clash | null {
  for (const wheel of wheels)
    for (let shaft = 0; shaft < middles.length; shaft++) {
      const apart = Math.abs(shaft - wheel.shaft);
      if (apart === 0 || (apart === 1 && planes[Math.min(shaft, wheel.shaft)] === wheel.plane)) continue;
      const other = taken[shaft * MOST_PLANES + wheel.plane];
      const need = wheel.outside + (other ? other.outside : collar / 2) + FREE_MM;
      if (apartOf(middles[wheel.shaft] as Middle, middles[shaft] as Middle) < need) return { wheel, other, shaft };
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
