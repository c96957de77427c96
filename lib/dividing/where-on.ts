import type { Plate } from '../tooling/tooling.ts';

/** A plate by its name, with the side where it has two. side: 0 for the first. */
export const whereOn = (plate: Plate, side: number): string => (plate.sides.length > 1 ? `${plate.name}, side ${side + 1}` : plate.name);
