// @ts-check
import { writeFileSync } from 'node:fs';
import { staircase } from './house/drawing.mjs';
import { readLadder } from './house/ladder.mjs';
import { realImports } from './house/real-imports.mjs';
import { ROOT } from './machinery/root.mjs';

// Draws docs/architecture.svg from the imports in the code. With --print it writes to the terminal instead, so that
// a test can compare.

process.chdir(ROOT);
const ladder = readLadder();
const imports = await realImports(ladder);
const stands = (/** @type {{ name: string }} */ place) => imports.has(place.name);
const boxes = [
  ...ladder.rooms.map((room) => ({ name: room.name, holds: room.holds, isRoom: true })),
  // The layer 'core' has one file of its own: the door of all its rooms.
  ...ladder.layers.map((layer) => ({
    name: layer.name,
    holds: layer.name === 'core' ? 'the door of all rooms, for other programs' : layer.holds,
    isRoom: layer.name === 'core',
  })),
].filter(stands);
const drawing = staircase(boxes, imports);

if (process.argv.includes('--print')) {
  process.stdout.write(drawing);
} else {
  writeFileSync('docs/architecture.svg', drawing);
  console.log('Drew docs/architecture.svg.');
}
