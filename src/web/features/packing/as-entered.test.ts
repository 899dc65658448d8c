import { describe, expect, it } from 'vitest';
import { asEntered, type PackEntry } from './as-entered.js';
import { anOrder, aPack, aPacking, PLAIN_10 } from './small-packing.js';

const packing = aPacking({ orders: [anOrder('R-1', '2026-04-16')], packs: [aPack('R-1')] });

const pick = (number: number, position = 1): PackEntry => ({
  number,
  useCase: 'pick-string',
  input: {
    packId: 'R-1/1',
    expectedVersion: 1,
    position,
    lotId: '2026-04-01 lot 4',
    binId: 'bin 4',
  },
});
const unpick = (number: number): PackEntry => ({
  number,
  useCase: 'unpick-string',
  input: { packId: 'R-1/1', expectedVersion: 1, position: 1 },
});
const seal = (number: number): PackEntry => ({
  number,
  useCase: 'seal-pack',
  input: { packId: 'R-1/1', expectedVersion: 1 },
});

const countOf = ({ lying }: typeof packing) => lying.find(({ stringKey }) => stringKey === PLAIN_10)?.count;

describe('what was entered and has not arrived', () => {
  it('is shown as done: the string is in the pack and out of its bin', () => {
    const seen = asEntered(packing, [pick(1)]);
    expect(seen.packs[0]!.body.picked).toEqual([
      { position: 1, stringKey: PLAIN_10, lotId: '2026-04-01 lot 4', binId: 'bin 4' },
    ]);
    expect(countOf(seen)).toBe(8);
  });

  it('counts in the order in which it was entered, however it comes', () => {
    expect(asEntered(packing, [unpick(2), pick(1)]).packs[0]!.body.picked).toEqual([]);
    const again = asEntered(packing, [pick(3), unpick(2), pick(1)]);
    expect(again.packs[0]!.body.picked).toHaveLength(1);
    expect(countOf(again)).toBe(8);
  });

  it('changes nothing once the shop has it', () => {
    const arrived = asEntered(packing, [pick(1)]);
    expect(asEntered(arrived, [pick(1)])).toEqual(arrived);
    const sealed = { ...packing, packs: [{ ...packing.packs[0]!, state: 'shipped' }] };
    expect(asEntered(sealed, [seal(1)]).packs[0]!.state).toBe('shipped');
  });

  it('gives a string that is laid back to its bin', () => {
    const arrived = asEntered(packing, [pick(1)]);
    expect(countOf(asEntered(arrived, [unpick(2)]))).toBe(9);
  });
});
