import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** The full path of something that stands in the project's folder. */
export const rootPath = (path: string): string => join(ROOT, path);

export interface HouseFile {
  /** From the root, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

export const houseFile = (path: string): HouseFile => ({
  path,
  text: readFileSync(rootPath(path), 'utf8'),
});

/** The files under some folders (or the files named) that `wanted` accepts. Finding none is an error, so that no
 * check passes because it read nothing. */
export function houseFiles(
  places: readonly string[],
  wanted: (path: string) => boolean,
): readonly HouseFile[] {
  const paths = places.flatMap(pathsUnder).filter(wanted);
  if (paths.length === 0)
    throw new Error(`This check reads nothing: no file of its kind in ${places.join(', ')}.`);
  return paths.sort().map(houseFile);
}

export const isCode = (path: string): boolean => /\.(ts|tsx|mjs)$/.test(path);
export const isTest = (path: string): boolean => /\.test\.tsx?$/.test(path);

function pathsUnder(place: string): readonly string[] {
  if (/\.\w+$/.test(place)) return [place];
  if (!existsSync(rootPath(place))) return [];
  return readdirSync(rootPath(place), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join('/'));
}
