import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { MACHINE, SET } from './first-machine.ts';
import { follow, openFolds, press, textIn, typeIn, whereTo } from './on-page.ts';

/** What a person does at the pages, again and again. */
export type Hands = {
  readonly go: (address: string) => Promise<unknown>;
  readonly addTool: (kind: string, typed: Readonly<Record<string, string>>) => Promise<void>;
  readonly addShopMachine: (typed: Readonly<Record<string, string>>) => Promise<void>;
  /** The first machine and its set, from the first page on. Gives the address of the set. */
  readonly firstSet: (differs?: Readonly<Record<string, string>>) => Promise<string>;
  /** The address of the operation of a part whose title begins so. */
  readonly operation: (part: string, title: string) => Promise<string>;
  readonly markDone: (operation: string, typed?: Readonly<Record<string, string>>) => Promise<void>;
};

export function handsAt(page: Page, base: string): Hands {
  const go = (address: string): Promise<unknown> => page.goto(base + address);
  const put = async (address: string, typed: Readonly<Record<string, string>>): Promise<void> => {
    await go(address);
    await openFolds(page);
    await typeIn(page, typed);
    await press(page, 'Put it on record');
    expect(await textIn(page, '.notice'), address).toContain('is on record');
  };
  return {
    go,
    addTool: (kind, typed) => put(`/tools/new/${kind}`, typed),
    addShopMachine: (typed) => put('/tools/machines/new', typed),
    firstSet: async (differs = {}) => {
      await go('/');
      await follow(page, 'Start with your own machine');
      await typeIn(page, MACHINE);
      await press(page, 'Put it on record');
      await follow(page, 'Add an assembly');
      await typeIn(page, { name: 'Index drive' });
      await press(page, 'Add it');
      await follow(page, 'Add its change gears');
      await page.check('text=Index drive');
      await typeIn(page, { newAssembly: '', ...SET, ...differs });
      await press(page, 'Put the set on record');
      return new URL(page.url()).pathname;
    },
    operation: async (part, title) => {
      await go(part);
      return whereTo(page, title, '#routing table');
    },
    markDone: async (operation, typed = {}) => {
      await go(operation);
      await typeIn(page, typed, '#measured');
      await press(page, 'Mark done');
      expect(await textIn(page, '.notice'), operation).toContain('Done');
    },
  };
}
