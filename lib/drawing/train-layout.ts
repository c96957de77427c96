import type { TrainShaft } from '../trains/train-shaft.ts';
import type { Point } from './drawing.ts';

/** A wheel as drawn: its middle in millimetres, which way it turns, and in which plane it runs (0 nearest the machine). */
export type DrawnWheel = {
  readonly teeth: number;
  readonly x: number;
  readonly y: number;
  readonly shaft: string;
  readonly clockwise: boolean;
  readonly plane: number;
  readonly idler?: boolean;
};

/** Each mesh turns the other way. */
const turnsClockwise = (shaft: number): boolean => shaft % 2 === 0;

/**
 * The wheels of a train on their shafts. at: the middles of the shafts; without it the shafts stand in a row, each touching the next,
 * which is no place on any quadrant. planes: the plane of each mesh; without it each wheel behind an idler keeps its plane and each pair
 * on one stud moves one plane out.
 */
export function wheelsOnShafts(
  shafts: readonly TrainShaft[],
  { moduleMm = 2, at, planes = planesOf(shafts) }: { moduleMm?: number; at?: readonly Point[]; planes?: readonly number[] } = {},
): DrawnWheel[] {
  const middles = at ?? inARow(shafts, moduleMm);
  return shafts.flatMap(({ name, driven, driver, idler = false }, n) => {
    const [x, y] = middles[n] ?? [0, 0];
    const wheel = (teeth: number, mesh: number): DrawnWheel => ({
      teeth,
      x,
      y,
      shaft: name,
      clockwise: turnsClockwise(n),
      plane: planes[mesh] ?? 0,
      ...(idler ? { idler } : {}),
    });
    if (idler && driven !== null) return [wheel(driven, n - 1)];
    return [...(driven === null ? [] : [wheel(driven, n - 1)]), ...(driver === null ? [] : [wheel(driver, n)])];
  });
}

/** The plane of each mesh: the next one out behind every stud with two wheels. */
function planesOf(shafts: readonly TrainShaft[]): number[] {
  const planes = [0];
  for (const shaft of shafts.slice(1, -1)) planes.push((planes.at(-1) ?? 0) + (shaft.idler ? 0 : 1));
  return planes;
}

/** The shafts in a zigzag, so that a long train stays on a narrow page. */
function inARow(shafts: readonly TrainShaft[], moduleMm: number): Point[] {
  const slope = shafts.length > 3 ? 0.9 : 0;
  const middles: Point[] = [[0, 0]];
  for (let n = 1; n < shafts.length; n++) {
    const [x, y] = middles[n - 1] as Point;
    const apart = (((shafts[n - 1]?.driver ?? 0) + (shafts[n]?.driven ?? 0)) * moduleMm) / 2;
    const turn = n % 2 === 1 ? slope : -slope;
    middles.push([x + apart * Math.cos(turn), y + apart * Math.sin(turn)]);
  }
  return middles;
}
