import { describe, expect, it } from 'vitest';
import { HTTP_FAULTS } from '../../src/contract/index.js';
import { statusOf } from '../../src/server/index.js';
import { houseFile } from '../house/the-house.js';

const rows = [
  ...houseFile('docs/handbook/api.md').text.matchAll(/^\| `([a-z-]+\.[a-z-]+)` \| ([\d, ]+) \|/gm),
].map(([, code, statuses]) => [code!, statuses!.split(', ').map(Number)] as const);

describe('the handbook page of the API', () => {
  it('tells every code that the server itself gives, and none that it does not', () => {
    expect(rows.map(([code]) => code).sort()).toEqual(Object.keys(HTTP_FAULTS).sort());
  });

  it.each(rows)('tells the status of %s', (code, statuses) => {
    expect(statuses).toContain(statusOf(code));
  });

  it.each(Object.keys(HTTP_FAULTS))(
    'has words for %s: what is wrong and what to do, each a sentence',
    (code) => {
      const words = HTTP_FAULTS[code]!;
      const { what, mend } = typeof words === 'function' ? words({ code, most: 500 }) : words;
      expect(what).toMatch(/^[A-Z0-9`].*\.$/);
      expect(mend).toMatch(/^[A-Z`].*\.$/);
    },
  );
});
