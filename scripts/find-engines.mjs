// Finds the other browsers that the job is tried in. npm test runs those that are here; none of them is needed.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fromPath, runnable } from './ensure-chromium.mjs';

export const findFirefox = () => fromPath(['firefox-esr', 'firefox']);

/** WebKitGTK's small browser, where its driver and a display without a screen are there too. */
export function findWebKit() {
  if (!fromPath(['WebKitWebDriver']) || !fromPath(['Xvfb'])) return undefined;
  const places = ['/usr/lib', ...foldersIn('/usr/lib'), '/usr/libexec'];
  return places
    .flatMap((place) => foldersIn(place).filter((folder) => /\/webkit2?gtk-[\d.]+$/.test(folder)))
    .map((folder) => join(folder, 'MiniBrowser'))
    .find(runnable);
}

/** @param {string} folder */
function foldersIn(folder) {
  if (!existsSync(folder)) return [];
  const entries = readdirSync(folder, { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map((entry) => join(folder, entry.name));
}

/** Which engines are run here and which are not, in a line. */
export function enginesHere() {
  const others = { Firefox: findFirefox(), WebKit: findWebKit() };
  const run = Object.entries(others).flatMap(([name, found]) => (found ? [name] : []));
  const missing = Object.entries(others).flatMap(([name, found]) => (found ? [] : [name]));
  const not = missing.length > 0 ? `; not here: ${missing.join(', ')} (npm run test:engines installs)` : '';
  return `run in ${['Chromium', ...run].join(', ')}${not}`;
}
