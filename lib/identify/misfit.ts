import type { Candidate } from './candidates.ts';
import { expected } from './expected.formulas.ts';
import { CONTRADICTS, UNEVEN } from './judgements.data.ts';
import type { Plain } from './readings.ts';
import type { Fit } from './weigh.ts';

/** One reading against one candidate as worn: off is read less what it should read (inches, of a helix radians); errors says how many of its errors that is. */
export type Misfit = { readonly reading: Plain; readonly off: number; readonly errors: number; readonly contradicts: boolean };

/** How each reading of a wheel misses a candidate, once the wear and the turned outside that fit best are allowed for. */
export function misfits(candidate: Candidate, fit: Fit, readings: readonly Plain[]): readonly Misfit[] {
  return readings.map((reading) => {
    const { nominal, perWear, perTip, error } = expected(reading, fit.stance, candidate);
    const off = reading.read - (nominal + perWear * fit.wear + perTip * fit.tip);
    const errors = Math.abs(off) / Math.sqrt(error * error + (perWear === 0 ? 0 : (UNEVEN * fit.wear) ** 2));
    return { reading, off, errors, contradicts: errors > CONTRADICTS };
  });
}

/** The misfit of lengths that is largest beside its error, in inches; 0 where nothing but a helix was read. */
export function worst(all: readonly Misfit[]): number {
  const lengths = all.filter(({ reading }) => reading.of !== 'helix');
  return lengths.reduce((most, one) => (one.errors > most.errors ? one : most), { off: 0, errors: 0 }).off;
}
