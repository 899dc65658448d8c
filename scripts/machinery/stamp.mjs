// @ts-check
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { ROOT, rootPath } from './root.mjs';

/** What something was made of, as one line to compare: the bytes of files, not their dates, since a fresh clone has
 * new dates and a switched branch old ones.
 * @param {readonly string[]} places files and folders from the root; those that are absent are left out
 * @param {readonly string[]} [facts] anything else that matters
 * @param {(path: string) => boolean} [counts] which files count
 * @returns {string} */
export function stampOf(places, facts = [], counts = () => true) {
  const hash = createHash('sha256');
  for (const fact of facts) hash.update(`${fact}\n`);
  for (const path of places.flatMap(filesUnder).filter(counts).sort()) {
    hash.update(`${path}\n`).update(readFileSync(rootPath(path)));
  }
  return hash.digest('hex');
}

/** Files from the root, with forward slashes.
 * @param {string} place
 * @returns {string[]} */
export function filesUnder(place) {
  if (!existsSync(rootPath(place))) return [];
  if (!isFolder(place)) return [place];
  return readdirSync(rootPath(place), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)).split(sep).join('/'));
}

/** @param {string} place */
const isFolder = (place) => {
  try {
    readdirSync(rootPath(place));
    return true;
  } catch {
    return false;
  }
};

/** @param {string} file @param {string} stamp */
export const stampIs = (file, stamp) =>
  existsSync(rootPath(file)) && readFileSync(rootPath(file), 'utf8') === stamp;

/** @param {string} file @param {string} stamp */
export function writeStamp(file, stamp) {
  mkdirSync(dirname(rootPath(file)), { recursive: true });
  writeFileSync(rootPath(file), stamp);
}
