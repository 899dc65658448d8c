import { expect, it } from 'vitest';
import type { ShopFlaw } from '../../core/day/index.js';
import { fileFaultWords } from './file-faults.js';

const said = (...flaws: ShopFlaw[]) => fileFaultWords({ code: 'shop.flawed', flaws }).what;

it('a flaw of a shop names the thing and what is wrong with it', () => {
  expect(
    said(
      { kind: 'names-nothing', where: 'spool A', what: 'wire', name: 'B' },
      { kind: 'named-twice', what: 'machine', name: 'wren' },
    ),
  ).toBe(
    'The shop file contradicts itself: spool A names the wire "B", which is not there; the machine "wren" is there twice.',
  );
  expect(said({ kind: 'wraps-miscounted', recipeId: 'r', layers: 2, wires: 1 })).toContain(
    'recipe r names 1 wrap wire for 2 layers',
  );
  expect(said({ kind: 'day-past-midnight', machineId: 'wren', endsAtMinute: 1530 })).toContain(
    'the day of machine wren ends 1 h 30 min after midnight',
  );
});
