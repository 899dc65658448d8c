// @ts-check
import { readFileSync } from 'node:fs';

/**
 * @typedef {{ name: string, holds: string, later?: boolean }} Room
 * @typedef {{ name: string, path: string, uses: string[], runsOn: 'anywhere' | 'node' | 'browser', holds: string, later?: boolean }} Layer
 * @typedef {{ rooms: Room[], layers: Layer[] }} Ladder
 */

/** The order of rooms and layers, read from `layers.json`.
 * @returns {Ladder} */
export function readLadder() {
  const ladder = JSON.parse(readFileSync(new URL('../../layers.json', import.meta.url), 'utf8'));
  assertDownward(ladder);
  return ladder;
}

/** A layer may use only what is listed before it, so that the data itself cannot hold a cycle.
 * @param {Ladder} ladder */
function assertDownward(ladder) {
  const seen = new Set();
  for (const layer of ladder.layers) {
    for (const used of layer.uses) {
      if (!seen.has(used)) {
        throw new Error(`layers.json: '${layer.name}' uses '${used}', which is not listed before it.`);
      }
    }
    seen.add(layer.name);
  }
}

/** Where a file of the code belongs: the room for the core, the layer for all else.
 * @param {Ladder} ladder
 * @param {string} path from the root, with forward slashes
 * @returns {string | undefined} */
export function placeOf(ladder, path) {
  const room = /^src\/core\/([^/]+)\//.exec(path)?.[1];
  if (room !== undefined) return room;
  return ladder.layers.find((layer) => path.startsWith(`${layer.path}/`))?.name;
}
