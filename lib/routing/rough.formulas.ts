/** Of the whole depth, what all roughing together takes: common practice, no source. */
const ROUGH_SHARE = 0.9;

/**
 * Depth dialled for roughing round r of q: equal shares of nine tenths of the depth.
 *   Hr = 0.9 × H × r ÷ q
 * H depth to dial, r the round, q rounds of roughing. Source: judgement, no source: 0.9 of the depth is left to be finished at one setting.
 * Example: 0.2696 in two rounds: 0.1213, then 0.2426.
 */
export const roughDepth = (H: number, r: number, q: number): number => (ROUGH_SHARE * H * r) / q;
