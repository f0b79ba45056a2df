// Installs the other browsers that the job is tried in, where apt can.
import { installByApt } from './ensure-chromium.mjs';
import { findFirefox, findWebKit } from './find-engines.mjs';

const PACKAGES = ['firefox-esr', 'webkit2gtk-driver', 'xvfb'];

const allHere = () => findFirefox() !== undefined && findWebKit() !== undefined;

if (!allHere()) {
  console.log(`Installing ${PACKAGES.join(', ')} to try the job in Firefox and WebKit`);
  installByApt(PACKAGES);
}
if (!allHere()) {
  console.error(
    `Firefox or WebKitGTK is missing. Install what these Debian packages hold: ${PACKAGES.join(', ')}.`,
  );
  process.exit(1);
}
