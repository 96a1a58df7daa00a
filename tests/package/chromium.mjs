// Where the browser is. None is downloaded.
import { existsSync } from 'node:fs';

const usualPlaces = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Path of a Chromium, or undefined. */
export function chromiumPath() {
  const named = process.env.CHROMIUM;
  if (named) return named;
  return usualPlaces.find((path) => existsSync(path));
}

export const chromiumRemedy =
  'Not run: no Chromium was found. Install one (Debian: apt-get install chromium), or name it: CHROMIUM=/path/to/chromium npm test';

/** A sandbox needs rights that root in a container lacks; nothing is looked up on the network. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
