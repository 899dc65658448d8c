// @ts-check
import { existsSync, readFileSync } from 'node:fs';
import { rootPath } from './root.mjs';
import { run } from './run.mjs';
import { SetUpFault, sayWhile } from './say.mjs';
import { stampIs, stampOf, writeStamp } from './stamp.mjs';

const STAMP = 'node_modules/.setup-stamp';
const LEAST_NODE = [20, 19];

/** Node 20.19 is the oldest that the page's bundler accepts. */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [leastMajor = 0, leastMinor = 0] = LEAST_NODE;
  if (major > leastMajor || (major === leastMajor && minor >= leastMinor)) return;
  throw new SetUpFault(
    `this is Node ${process.versions.node}; Tautwork needs ${LEAST_NODE.join('.')} or newer. ` +
      'Install a current Node from nodejs.org and run the command again.',
  );
}

/** Installs the locked packages where they are missing, changed, or were made for another Node.
 * @returns {Promise<'installed' | 'ready'>} */
export async function installPackages() {
  const stamp = packagesStamp();
  if (existsSync(rootPath('node_modules/.package-lock.json')) && stampIs(STAMP, stamp)) return 'ready';
  const code = await sayWhile('installing the packages (about a minute the first time)', npmCi);
  if (code !== 0) {
    throw new SetUpFault(
      `the packages could not be installed (npm ended with ${code}; its own words stand above). ` +
        'Check the network connection and run the command again.',
    );
  }
  writeStamp(STAMP, stamp);
  return 'installed';
}

function packagesStamp() {
  const { dependencies, devDependencies, overrides, allowScripts } = JSON.parse(
    readFileSync(rootPath('package.json'), 'utf8'),
  );
  const wanted = JSON.stringify({ dependencies, devDependencies, overrides, allowScripts });
  return stampOf(['package-lock.json'], [process.version, process.arch, process.platform, wanted]);
}

function npmCi() {
  // A reader's own npm settings must not leave half of the packages out.
  const words = [
    'ci',
    '--include=dev',
    '--ignore-scripts=false',
    '--no-audit',
    '--no-fund',
    '--loglevel=error',
  ];
  const {
    NODE_ENV: _nodeEnv,
    npm_config_ignore_scripts: _ignore,
    npm_config_omit: _omit,
    ...env
  } = process.env;
  const npm = process.env.npm_execpath;
  if (npm !== undefined && /\.c?js$/.test(npm)) return run(process.execPath, [npm, ...words], { env });
  const isWindows = process.platform === 'win32';
  return run('npm', words, { env, shell: isWindows });
}
