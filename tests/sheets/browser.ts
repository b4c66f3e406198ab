import { accessSync, constants } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const isThere = (path: string | undefined): path is string => {
  try {
    if (path === undefined) return false;
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

const path = [process.env.KETTLEHAND_BROWSER, '/usr/bin/chromium', '/usr/bin/chromium-browser'].find(isThere);

const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Whether no browser is installed; then says what is skipped. */
export const withoutBrowser = (what: string): boolean => {
  if (path !== undefined) return false;
  console.warn(`Skipped: ${what} in a browser. No Chromium is installed (Debian: apt-get install chromium).`);
  return true;
};

export const launched = (): Promise<Browser> => chromium.launch({ executablePath: path ?? '', args: flags });
