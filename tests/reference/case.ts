/**
 * A check against something outside the project.
 * published: read in the named source. common practice: no source. memory: recalled, no source at hand.
 * derived: an acceptance story's own derivation, by another route than lib's.
 */
export type CaseKind = 'published' | 'common practice' | 'memory' | 'derived';

export type Case = {
  readonly topic: string;
  readonly kind: CaseKind;
  /** Title, edition, page or section; or 'common practice, no source'; or 'value from memory'; or 'derived: by what route'. */
  readonly source: string;
  /** Cases from one printed table share this name; the table counts five at most in any total. */
  readonly table?: string;
  readonly given: string;
  /** The printed or recalled answer, in `unit`. Never worked out by lib. */
  readonly expected: number;
  readonly tolerance: number;
  readonly unit: string;
  readonly actual: () => number;
  /** The mistake that this case would catch. */
  readonly catches: string;
};
