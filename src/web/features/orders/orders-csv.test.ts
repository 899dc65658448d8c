import { describe, expect, it } from 'vitest';
import { csvOf } from './orders-csv.js';

describe('a list as CSV', () => {
  it('quotes what holds commas, quotes or line ends', () => {
    expect(csvOf([['T-1', 'Barleycroft, Jorla', 'the "old" set', 2]])).toBe(
      'T-1,"Barleycroft, Jorla","the ""old"" set",2',
    );
    expect(csvOf([['a\nb'], ['c']])).toBe('"a\nb"\r\nc');
  });

  it('lets no cell work as a formula', () => {
    expect(csvOf([['=1+1', '+44', '-5', '@x', -5]])).toBe("'=1+1,'+44,'-5,'@x,-5");
  });
});
