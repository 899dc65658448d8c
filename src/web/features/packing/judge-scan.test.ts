import { describe, expect, it } from 'vitest';
import { judgeScan, packCalled } from './judge-scan.js';
import type { Packing } from './packing-roll.js';
import { nextPlace } from './places.js';
import {
  anOrder,
  aPack,
  aPacking,
  lying,
  PLAIN_10,
  PLAIN_13,
  WOUND_26,
  WOUND_26_LONG,
} from './small-packing.js';

const room = (changes: Partial<Packing> = {}): Packing =>
  aPacking({
    orders: [anOrder('R-1', '2026-04-16'), anOrder('R-2', '2026-04-16')],
    packs: [aPack('R-1'), aPack('R-2')],
    ...changes,
  });

function scan(text: string, { packing = room(), position = 1 } = {}) {
  const pack = packing.packs[0]!;
  const place = pack.body.wanted.find((wanted) => wanted.position === position);
  return judgeScan(text, { pack, place, packing });
}

describe('a scan into a pack', () => {
  it('takes the string by its lot or by its bin', () => {
    const taken = { kind: 'take', position: 1, lotId: '2026-04-01 lot 4', binId: 'bin 4' };
    expect(scan('2026-04-01 lot 4')).toEqual(taken);
    expect(scan('  BIN  4 ')).toEqual(taken);
  });

  it('needs no more than digits, as long as they name one thing', () => {
    expect(scan('202604014')).toMatchObject({ kind: 'take', lotId: '2026-04-01 lot 4' });
    expect(scan('4')).toMatchObject({ kind: 'take', binId: 'bin 4' });
    const twin = room();
    const two = { ...twin, bins: [...twin.bins, { id: 'shelf 4', name: 'shelf 4', walkOrder: 9 }] };
    expect(scan('4', { packing: two })).toEqual({
      kind: 'wrong',
      because: 'not-clear',
      names: ['bin 4', 'shelf 4'],
    });
  });

  it('takes a string that belongs elsewhere in the pack for that place', () => {
    expect(scan('bin 3')).toMatchObject({ kind: 'take', position: 3 });
  });

  it('refuses a string of another gauge, kind, material or length, and says which', () => {
    const packing = room({ lying: [...room().lying, lying('lot 99', 'bin 9', WOUND_26_LONG, 4)] });
    expect(scan('lot 99', { packing })).toMatchObject({
      because: 'wrong-string',
      given: WOUND_26_LONG,
      wanted: { position: 1 },
      differs: ['gaugeThou', 'kind', 'material', 'lengthM'],
    });
    expect(scan('lot 99', { packing, position: 3 })).toMatchObject({ differs: ['lengthM'] });
  });

  it('refuses the right string of a lot that is on hold, by lot and by bin', () => {
    const held = { ...lying('lot 5', 'bin 4', PLAIN_10, 9, 'on-hold'), holdReason: 'kinked' };
    const packing = room({ lying: [held] });
    const wanted = { because: 'held', lot: 'lot 5', state: 'on-hold', reason: 'kinked' };
    expect(scan('lot 5', { packing })).toMatchObject(wanted);
    expect(scan('bin 4', { packing })).toMatchObject(wanted);
  });

  it('refuses an empty bin, and one whose books are at nothing', () => {
    expect(scan('bin 4', { packing: room({ lying: [] }) })).toMatchObject({
      because: 'bin-empty',
      bin: 'bin 4',
    });
    const none = room({ lying: [lying('lot 5', 'bin 4', PLAIN_10, 0)] });
    expect(scan('bin 4', { packing: none })).toMatchObject({ because: 'bin-empty' });
    expect(scan('lot 5', { packing: none })).toMatchObject({ because: 'bin-empty' });
  });

  it('asks for the lot where a bin holds several strings of the pack', () => {
    const mixed = room({ lying: [lying('a', 'bin 1', PLAIN_13, 1), lying('b', 'bin 1', WOUND_26, 1)] });
    expect(scan('bin 1', { packing: mixed })).toMatchObject({ because: 'bin-mixed' });
    expect(scan('bin 1', { packing: mixed, position: 3 })).toMatchObject({ kind: 'take', lotId: 'b' });
  });

  it('refuses what nothing is called, and any string once the pack is full', () => {
    expect(scan('bin 77')).toEqual({ kind: 'wrong', because: 'unknown' });
    expect(scan('bin 4', { position: 0 })).toEqual({ kind: 'wrong', because: 'full' });
  });

  it('knows the label of this pack from that of another', () => {
    expect(scan('TW1:R-1:1:1')).toEqual({ kind: 'this-pack' });
    expect(scan('tw1:r-2:1:1')).toEqual({ kind: 'other-pack', packId: 'R-2/1' });
    expect(packCalled('TW1:R-2:1:1', room())?.id).toBe('R-2/1');
    expect(packCalled('bin 4', room())).toBeUndefined();
  });
});

describe('the place to fill next', () => {
  it('is the first along the walk, not the first of the set', () => {
    const packing = room({ lying: room().lying.filter(({ lotId }) => lotId !== '2026-04-01 lot 7') });
    expect(nextPlace(packing.packs[0]!, packing)?.stringKey).toBe(PLAIN_13);
  });

  it('is one whose string lies somewhere, as long as there is one', () => {
    const packing = room({ lying: [lying('lot', 'bin 3', WOUND_26, 1)] });
    expect(nextPlace(packing.packs[0]!, packing)?.position).toBe(3);
    expect(nextPlace(packing.packs[0]!, { ...packing, lying: [] })?.position).toBe(1);
  });
});
