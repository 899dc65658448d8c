import { describe, expect, it } from 'vitest';
import { meaningOf, outcomesOf, type Preview, withMeaning } from './mapping.js';

const mapping = { order: 'Ref', player: 'Name', note: 'Remark' };

describe('what headings mean', () => {
  it('is one thing each, and one heading for each thing', () => {
    const changed = withMeaning(mapping, 'Remark', 'player');
    expect(changed).toEqual({ order: 'Ref', player: 'Remark' });
    expect(meaningOf(changed, 'Remark')).toBe('player');
    expect(meaningOf(changed, 'Name')).toBeUndefined();
  });
});

describe('a preview', () => {
  it('is counted by outcome', () => {
    const orders = ['new', 'same', 'new', 'fault'].map((outcome) => ({ outcome }));
    expect(outcomesOf({ orders } as unknown as Preview)).toEqual({ new: 2, changed: 0, same: 1, fault: 1 });
  });
});
