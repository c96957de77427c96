/**
 * A shaft of a train, from the source on. driven: teeth of the wheel that turns it (null on the first shaft); driver: teeth of the wheel
 * by which it turns the next one (null on the last). An idler is one wheel that is both.
 */
export type TrainShaft = {
  readonly name: string;
  readonly driven: number | null;
  readonly driver: number | null;
  readonly idler?: boolean;
};
