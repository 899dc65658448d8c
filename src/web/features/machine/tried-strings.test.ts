import { describe, expect, it } from 'vitest';
import type { FirstOff } from '../../../core/winding/index.js';
import type { Trial } from './run-count.js';
import { triedStrings } from './tried-strings.js';

const PLAN = { placesFromEndM: [0.05], rotationsDeg: [0] } as unknown as FirstOff;
const trial = (change: Partial<Trial>): Trial =>
  ({ id: 't', number: 1, position: 1, verdict: 'open', ...change }) as Trial;

describe('strings as the dial-in takes them', () => {
  it('waits for the readings of the last string', () => {
    expect([...triedStrings([trial({})], [], PLAN).toMeasure]).toEqual([0]);
  });

  it('waits for none of a string that was thrown away', () => {
    expect([...triedStrings([trial({ verdict: 'scrap' })], [], PLAN).toMeasure]).toEqual([]);
  });
});
