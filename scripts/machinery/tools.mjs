// @ts-check
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './run.mjs';
import { say, sayWhile } from './say.mjs';

/** Programs that only the tests need: a browser to walk the page, and readers that prove a PDF says what it should and
 * that its codes can be scanned. Each with the Debian package that brings it. */
const TOOLS = [
  { program: 'pdftotext', brings: 'poppler-utils' },
  { program: 'pdftoppm', brings: 'poppler-utils' },
  { program: 'zbarimg', brings: 'zbar-tools' },
];
const FONT = { file: '/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf', brings: 'fonts-dejavu-core' };

const BROWSER_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

/** Where a browser stands that the tests can drive; `CHROMIUM_PATH` names another.
 * @returns {string | undefined} */
export function findBrowser() {
  const named = process.env.CHROMIUM_PATH;
  if (named) return existsSync(named) ? named : undefined;
  return BROWSER_PLACES.find((place) => existsSync(place));
}

/** Looks for the tests' programs and, where that can be done without asking anyone (root, with apt-get), installs what
 * is missing.
 * @returns {Promise<readonly string[]>} the packages that are still missing */
export async function prepareTools() {
  const missing = missingPackages();
  if (missing.length === 0) return [];
  const named = process.env.CHROMIUM_PATH;
  if (named && !existsSync(named)) {
    say(`CHROMIUM_PATH names ${named}, which does not exist; correct it or leave it out.`);
  } else if (canInstall()) {
    await sayWhile(`installing what only the tests need: ${missing.join(', ')}`, () => aptInstall(missing));
  }
  const still = missingPackages();
  if (still.length > 0) {
    say(
      `missing: ${still.join(', ')}. Tests that need them are skipped here (with CI set, that is a failure).`,
    );
    say(`  On Debian or Ubuntu: sudo apt-get install --no-install-recommends ${still.join(' ')}`);
    say('  Elsewhere: install Chromium (or set CHROMIUM_PATH), Poppler and ZBar with your package manager.');
  }
  return still;
}

function missingPackages() {
  const missing = TOOLS.filter(({ program }) => !isOnPath(program)).map(({ brings }) => brings);
  if (findBrowser() === undefined) missing.unshift('chromium');
  if (process.platform === 'linux' && canInstall() && !existsSync(FONT.file)) missing.push(FONT.brings);
  return [...new Set(missing)];
}

const canInstall = () => process.getuid?.() === 0 && isOnPath('apt-get');

/** @param {readonly string[]} packages */
async function aptInstall(packages) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  // Another apt at work is waited for rather than fought.
  const apt = (/** @type {string[]} */ ...words) =>
    run('apt-get', ['-o', 'DPkg::Lock::Timeout=300', '-qq', ...words], { env });
  if ((await apt('update')) !== 0) say('  apt-get update failed; trying with the lists at hand.');
  await apt('install', '--yes', '--no-install-recommends', ...packages);
}

/** @param {string} program */
function isOnPath(program) {
  const names = process.platform === 'win32' ? [`${program}.exe`, `${program}.cmd`] : [program];
  const folders = (process.env.PATH ?? '').split(delimiter);
  return folders.some((folder) => names.some((name) => existsSync(join(folder, name))));
}
