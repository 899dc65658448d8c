// @ts-check
import { existsSync } from 'node:fs';
import { cruise } from 'dependency-cruiser';
import configuration from '../../.dependency-cruiser.mjs';
import { placeOf } from './ladder.mjs';

/** Which room or layer imports which, read from the code; tests are left out. The current folder must be the root.
 * @param {import('./ladder.mjs').Ladder} ladder
 * @returns {Promise<Map<string, Set<string>>>} the places imported, by the place that imports them */
export async function realImports(ladder) {
  const folders = ['src', 'demo'].filter((folder) => existsSync(folder));
  const { output } = await cruise(folders, {
    ...configuration.options,
    exclude: { path: '\\.test\\.tsx?$' },
  });
  if (typeof output === 'string') throw new Error('The cruiser gave words where a graph was asked for.');
  /** @type {Map<string, Set<string>>} */
  const imports = new Map();
  for (const module of output.modules) {
    const importer = placeOf(ladder, module.source);
    if (importer === undefined) continue;
    const imported = imports.get(importer) ?? new Set();
    imports.set(importer, imported);
    for (const dependency of module.dependencies) {
      const place = placeOf(ladder, dependency.resolved);
      if (place !== undefined && place !== importer) imported.add(place);
    }
  }
  if (imports.size === 0) throw new Error('No code was found to draw.');
  return imports;
}
