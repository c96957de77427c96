import { existsSync } from 'node:fs';
import { type Browser, chromium, type LaunchOptions } from 'playwright-core';

const USUAL_PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export const launch = (executablePath: string, more: LaunchOptions = {}): Promise<Browser> =>
  chromium.launch({ executablePath, args: QUIET, ...more });

/** Path of a Chromium, or '' when there is none. CHROMIUM_PATH stands over the usual places. */
export function chromiumPath(): string {
  const named = process.env['CHROMIUM_PATH'];
  return [...(named ? [named] : []), ...USUAL_PLACES].find((place) => existsSync(place)) ?? '';
}
