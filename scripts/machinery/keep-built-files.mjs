import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const SOURCE = fileURLToPath(new URL('../../src/web/shell/service-worker.js', import.meta.url));
const PUBLIC = fileURLToPath(new URL('../../src/web/public/', import.meta.url));

/**
 * Writes the service worker of the page with the list of what was built: the files that a browser keeps in order to open without a
 * line. A plug-in of the bundler.
 * @returns {import('vite').Plugin}
 */
export const keepBuiltFiles = () => ({
  name: 'keep-built-files',
  apply: 'build',
  // After the page itself was written into the bundle.
  enforce: 'post',
  generateBundle(_, bundle) {
    const content = createHash('sha256');
    const built = Object.values(bundle).filter(({ fileName }) => !fileName.endsWith('.map'));
    for (const file of built) content.update(file.type === 'chunk' ? file.code : file.source);
    const standing = readdirSync(PUBLIC);
    for (const name of standing) content.update(readFileSync(`${PUBLIC}${name}`));
    const files = [...built.map(({ fileName }) => fileName), ...standing].map((name) => `/${name}`).sort();
    const keptAs = `tautwork-shell-${content.digest('hex').slice(0, 16)}`;
    const given = `const KEPT_AS = ${JSON.stringify(keptAs)};\nconst KEPT_FILES = ${JSON.stringify(files)};\n`;
    this.emitFile({
      type: 'asset',
      fileName: 'keep-shell.js',
      source: given + readFileSync(SOURCE, 'utf8'),
    });
  },
});
