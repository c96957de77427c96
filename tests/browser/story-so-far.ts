import type { Page } from 'playwright-core';
import type { Hands } from './hands.ts';

/** The story as far as it has been played: each test goes on where the last one stopped. at: addresses found on the way. */
export type Story = {
  readonly page: () => Page;
  readonly base: () => string;
  readonly hands: () => Hands;
  readonly errors: readonly string[];
  readonly at: Record<'set' | 'part22' | 'part28', string>;
};
