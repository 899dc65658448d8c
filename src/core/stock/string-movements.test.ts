import { describe, expect, it } from 'vitest';
import type { Balance, Movement } from './ledger.js';
import { movementFault } from './ledger-laws.js';
import { replay } from './ledger-replay.js';
import { pickString, sealPack, shipPack, unpickString, voidPack } from './pack-movements.js';
import {
  countDifference,
  makeStrings,
  moveStrings,
  receivePieces,
  scrapStrings,
} from './string-movements.js';

const string = { stringKey: '46', lotId: 'lot' };
const made = makeStrings({
  string,
  runId: 'run',
  binId: 'a',
  good: 10,
  scrap: [{ reason: 'gap', count: 2 }],
})!;
const envelopes = receivePieces({ item: 'pack/envelope', binId: 'desk', count: 5 });
const inHand = { string, binId: 'a', orderId: 'o', packId: 'p' };
const seal = sealPack({
  packId: 'p',
  orderId: 'o',
  setName: 'six',
  strings: [string, string],
  consumed: [{ item: 'pack/envelope', binId: 'desk', count: 1 }],
});

/** What lies there, as `account item quantity`. */
function lies(...movements: readonly (Movement | undefined)[]): readonly string[] {
  const all = movements.filter((movement) => movement !== undefined);
  expect(all.map(movementFault).filter(Boolean)).toEqual([]);
  return replay(all).map(({ account, item, quantity }) => `${account} ${item} ${quantity}`);
}
const holdsOfPack = (...movements: readonly Movement[]): readonly Balance[] =>
  replay(movements).filter(({ account }) => account === 'pack/p');

describe('strings', () => {
  it('come from a run, the good ones to a bin and the others to scrap by reason, all of one lot', () => {
    expect(lies(made)).toEqual(['bin/a string/46 10', 'made string/46 -12', 'scrap/gap string/46 2']);
    expect(made.entries.every(({ lot }) => lot === 'lot')).toBe(true);
    expect(makeStrings({ string, runId: 'run', binId: 'a', good: 0, scrap: [] })).toBeUndefined();
  });

  it('take their ends with them', () => {
    const ends = [{ item: 'end/ball', binId: 'ends', count: 12 }] as const;
    const withEnds = makeStrings({ string, runId: 'run', binId: 'a', good: 12, scrap: [], ends });
    expect(lies(withEnds)).toContain('wound-in end/ball 12');
  });

  it('are carried between bins, scrapped and counted', () => {
    const move = moveStrings({ string, fromBinId: 'a', toBinId: 'b', count: 4 });
    const scrap = scrapStrings({ string, binId: 'b', count: 1, reason: 'rust' });
    const count = countDifference({ string, binId: 'a', onBook: 6, counted: 5, reason: 'stock-taking' });
    expect(lies(made, move, scrap, count)).toEqual([
      'bin/a string/46 5',
      'bin/b string/46 3',
      'count-difference/stock-take string/46 1',
      'made string/46 -12',
      'scrap/gap string/46 2',
      'scrap/rust string/46 1',
    ]);
    expect(countDifference({ string, binId: 'a', onBook: 6, counted: 6, reason: 'x' })).toBeUndefined();
  });

  it.each([0, -1, 1.5, Number.NaN])('are not moved %s at a time', (count) => {
    expect(() => moveStrings({ string, fromBinId: 'a', toBinId: 'b', count })).toThrow(/moved/);
    expect(() => scrapStrings({ string, binId: 'a', count, reason: 'rust' })).toThrow(/moved/);
  });

  it('are not moved to where they lie', () => {
    expect(() => moveStrings({ string, fromBinId: 'a', toBinId: 'a', count: 1 })).toThrow(/another bin/);
  });
});

describe('a pack', () => {
  const picked = [made, envelopes, pickString(inHand), pickString(inHand)];

  it('is picked, sealed and shipped', () => {
    expect(lies(...picked)).toContain('order/o string/46 2');
    expect(lies(...picked, unpickString(inHand))).toContain('order/o string/46 1');
    const sealed = lies(...picked, seal);
    expect(sealed).toContain('pack/p string/46 2');
    expect(sealed).toContain('pack/p set/six 1');
    expect(sealed).toContain('bin/desk pack/envelope 4');
    const ship = shipPack({ packId: 'p', holds: holdsOfPack(...picked, seal) });
    const gone = lies(...picked, seal, ship);
    expect(gone).toEqual(
      expect.arrayContaining(['customer string/46 2', 'customer set/six 1', 'customer pack/envelope 1']),
    );
    expect(gone.filter((line) => /^(pack|order)\//.test(line))).toEqual([]);
  });

  it('taken apart gives its strings back to bins, and its envelope is scrap', () => {
    const holds = holdsOfPack(...picked, seal);
    const back = [
      { string, binId: 'a' },
      { string, binId: 'b' },
    ];
    const apart = voidPack({ packId: 'p', holds, back, reason: 'wrong set' });
    expect(lies(...picked, seal, apart)).toEqual([
      'bin/a string/46 9',
      'bin/b string/46 1',
      'bin/desk pack/envelope 4',
      'made string/46 -12',
      'scrap/gap string/46 2',
      'scrap/pack-voided pack/envelope 1',
      'supplier pack/envelope -5',
    ]);
    const fewer = back.slice(1);
    expect(() => voidPack({ packId: 'p', holds, back: fewer, reason: 'x' })).toThrow(/go back/);
  });

  it('with nothing in it is neither sealed nor shipped', () => {
    expect(() => sealPack({ packId: 'p', orderId: 'o', setName: 'six', strings: [] })).toThrow(/string/);
    expect(() => shipPack({ packId: 'p', holds: [] })).toThrow(/empty/);
  });
});
