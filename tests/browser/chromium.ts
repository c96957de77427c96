import { type Browser, chromium } from 'playwright-core';

const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const launch = (executablePath: string): Promise<Browser> => chromium.launch({ executablePath, args: QUIET });
