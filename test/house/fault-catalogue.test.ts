import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ORDER_FAULT_CODES, orderFaultWords } from '../../src/contract/index.js';
import { packageRoot } from '../../src/workshop/index.js';

const codes: readonly string[] = ORDER_FAULT_CODES;

describe('the catalogue of faults in the handbook', () => {
  const page = readFileSync(new URL('docs/handbook/faults.md', packageRoot()), 'utf8');
  const told = [...page.matchAll(/^\| `(order\.[a-z-]+)` \|/gm)].map(([, code]) => code);

  it('tells every code that the core can give, and none that it cannot', () => {
    expect(codes.length).toBeGreaterThan(15);
    expect([...told].sort()).toEqual([...codes].sort());
  });

  it('has words for each: what is wrong and how to mend it, each a sentence', () => {
    for (const code of codes) {
      const { what, mend } = orderFaultWords({
        line: 1,
        code: code as never,
        facts: {},
        column: 'due',
        read: 'x',
      });
      expect(what, code).toMatch(/^["A-Z].*\.$/);
      expect(mend, code).toMatch(/^[A-Z].*\.$/);
    }
  });
});
