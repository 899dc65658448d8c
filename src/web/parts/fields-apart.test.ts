import { describe, expect, it } from 'vitest';
import { fieldsApart } from './fields-apart.js';

describe('two versions of a record', () => {
  it('stand side by side, and tell where they differ', () => {
    const here = [
      { name: 'core', value: 'hex 14' },
      { name: 'note', value: 'soft' },
    ];
    const there = [
      { name: 'core', value: 'hex 16' },
      { name: 'note', value: 'soft' },
    ];
    expect(fieldsApart(here, there)).toEqual([
      { name: 'core', here: 'hex 14', there: 'hex 16', differs: true },
      { name: 'note', here: 'soft', there: 'soft', differs: false },
    ]);
  });

  it('show a field that only one of them has', () => {
    const [second] = fieldsApart([], [{ name: 'second wrap', value: '12' }]);
    expect(second).toEqual({ name: 'second wrap', here: '—', there: '12', differs: true });
  });
});
