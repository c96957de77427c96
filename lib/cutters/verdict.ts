import { FORM_JUDGEMENT } from './verdict.data.ts';

/** right: inside its range. hair: as good as right. thin: tips thin, runs. The last two are refused. */
export type Verdict = 'right' | 'hair' | 'thin' | 'too thin' | 'rubs';

/** The verdict on a cutter used outside its range, from its error at the tips as a part of the module. Thresholds are judgement. */
export function verdictOn(tipErrorInModules: number): Exclude<Verdict, 'right'> {
  if (tipErrorInModules < -FORM_JUDGEMENT.hairFull) return 'rubs';
  if (tipErrorInModules <= FORM_JUDGEMENT.hairThin) return 'hair';
  return tipErrorInModules <= FORM_JUDGEMENT.thin ? 'thin' : 'too thin';
}

export const isRefused = (verdict: Verdict): boolean => verdict === 'rubs' || verdict === 'too thin';

export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  right: 'Right cutter.',
  hair: 'Hardly off: runs.',
  thin: 'Tips a little thin: noisy, runs. For a slow gear.',
  'too thin': 'Tips too thin: refused.',
  rubs: 'Leaves the tips full, they rub: refused.',
};
