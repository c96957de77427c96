/**
 * Sizes that make no sense together. Says in shop words what was given, what the limit is and what to try;
 * `about` names the inputs at fault (keys of the sum or form), so that the message can stand beside them.
 */
export class DomainError extends Error {
  readonly given: string;
  readonly limit: string;
  readonly tryThis: string;
  readonly about: readonly string[];
  constructor(says: { given: string; limit: string; tryThis: string; about?: readonly string[] }) {
    super(`${says.given} ${says.limit} ${says.tryThis}`);
    this.name = 'DomainError';
    this.given = says.given;
    this.limit = says.limit;
    this.tryThis = says.tryThis;
    this.about = says.about ?? [];
  }
}
