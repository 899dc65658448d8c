import { describe, expect, it } from 'vitest';
import type { OrderFault } from '../../core/orders/index.js';
import { orderFaultWords } from './order-faults.js';

const said = (fault: Omit<OrderFault, 'line'>): string => {
  const { what, mend } = orderFaultWords({ line: 2, ...fault });
  return `${what} ${mend}`;
};

describe('a fault in words', () => {
  it('of a string that would break offers a scale only where an instrument has it', () => {
    const facts = { position: 1, pitch: 'E4', scaleMm: 864, highestPitch: 'B3' };
    const code = 'order.pitch-unreachable';
    expect(said({ code, facts: { ...facts, longestScaleMm: 668 } })).toBe(
      'String 1 would break before it reaches E4 at 864 mm: it may go to B3. Tune it to B3 or below, or shorten its scale to 668 mm or less.',
    );
    expect(said({ code, facts: { ...facts, longestScaleMm: 200 } })).toMatch(/ Tune it to B3 or below\.$/);
    expect(said({ code, facts: { ...facts, longestScaleMm: 200, givenThou: 70 } })).toContain(
      'String 1, given as 70, would break before it reaches E4 at 864 mm: it may go to B3. Let go of the given gauge, or tune it to B3 or below.',
    );
  });

  it('of a machine leaves those out that are for other work, unless there are no others', () => {
    const facts = {
      stringKey: '62 wound pure-nickel ball 1000 mm',
      machines: ['Wren', 'Bench'],
      reasons: ['winding.gauge-out-of-range', 'winding.wrong-station'],
    };
    expect(said({ code: 'order.machine-missing', facts })).toContain(': Wren (gauge out of its range).');
    expect(
      said({
        code: 'order.machine-missing',
        facts: { ...facts, machines: ['Bench'], reasons: ['winding.wrong-station'] },
      }),
    ).toContain(': Bench (made for other work).');
    expect(said({ code: 'order.machine-missing', facts: { ...facts, machines: [], reasons: [] } })).toContain(
      'The shop has no machine to make 62 wound, pure nickel',
    );
  });

  it('of a tuning says whether octaves, notes or sense are missing', () => {
    const of = (facts: OrderFault['facts']) =>
      orderFaultWords({ line: 2, code: 'order.tuning-unreadable', read: 'E A D G', facts }).what;
    expect(of({ given: 1, octavesNeeded: 1 })).toBe(
      '"E A D G" names notes without octaves, and a single string has no usual tuning to take them from.',
    );
    expect(of({ given: 4, strings: 6 })).toBe('"E A D G" has 4 notes for 6 strings.');
    expect(of({ part: 'G' })).toBe('"E A D G" cannot be read as a tuning (at "G").');
  });

  it('of a wish says what is wrong with the part', () => {
    const of = (because: string) =>
      said({
        code: 'order.cell-unreadable',
        read: 'even 1 N',
        facts: { expected: 'wishes', part: 'even 1 N', because, examples: ['even'] },
      });
    expect(of('out-of-range')).toContain('The part "even 1 N" asks for more or less than a string can give.');
    expect(of('contradiction')).toContain('The part "even 1 N" contradicts a part before it.');
    expect(of('unreadable')).toContain('The part "even 1 N" is not known.');
  });

  it('of an aim without a pull says how to give one', () => {
    expect(said({ code: 'order.no-set-fits', facts: { because: 'target.pulls-missing' } })).toMatch(
      /\(no pull is given to aim at\)\. Name a liked set under likes, or write a pull: even 75 N/,
    );
  });

  it('of a string that a set does not have says how strings are counted', () => {
    expect(said({ code: 'order.strings-do-not-match', facts: { strings: 6, string: 9 } })).toBe(
      'The set has 6 strings: there is no string 9. Count strings from the thinnest, which is string 1.',
    );
  });
});
