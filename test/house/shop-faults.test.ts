import { describe, expect, it } from 'vitest';
import {
  HTTP_FAULTS,
  ORDER_FAULT_CODES,
  WORKSHOP_FAULTS,
  workshopFaultWords,
} from '../../src/contract/index.js';
import { houseFile, houseFiles, isCode, isTest } from './the-house.js';

const CODE = /\bcode: '([a-z]+(?:-[a-z]+)*(?:\.[a-z]+(?:-[a-z]+)*)?)'/g;

/** Faults of files, of archives and of the way in, which have pages and words of their own. */
const elsewhere = new Set<string>([
  ...ORDER_FAULT_CODES,
  ...Object.keys(HTTP_FAULTS),
  ...['file-faults', 'archive-faults'].flatMap((file) =>
    [...houseFile(`src/contract/words/${file}.ts`).text.matchAll(CODE)].map(([, code]) => code!),
  ),
]);

/** Codes written down in the use cases, each with the files that give it. */
function codesGiven(): ReadonlyMap<string, readonly string[]> {
  const given = new Map<string, string[]>();
  for (const { path, text } of houseFiles(['src/workshop'], (path) => isCode(path) && !isTest(path))) {
    for (const [, code] of text.matchAll(CODE)) given.set(code!, [...(given.get(code!) ?? []), path]);
  }
  return given;
}

describe('a refusal of the shop', () => {
  const given = codesGiven();
  const listed = [
    ...houseFile('docs/handbook/faults-of-the-shop.md').text.matchAll(
      /^\| `([a-z.-]+)` \| [^|]+ \| [^|]+ \|$/gm,
    ),
  ].map(([, code]) => code!);

  it('has words, whatever use case gives it', () => {
    expect(given.size).toBeGreaterThan(40);
    const silent = [...given].filter(([code]) => !elsewhere.has(code) && !(code in WORKSHOP_FAULTS));
    expect(silent, 'Add its words to src/contract/words').toEqual([]);
  });

  it('stands in the handbook once, and nothing else does', () => {
    const remedy = 'Add, or take away, its row in docs/handbook/faults-of-the-shop.md';
    expect([...listed].sort(), remedy).toEqual(Object.keys(WORKSHOP_FAULTS).sort());
  });

  it.each(Object.keys(WORKSHOP_FAULTS))(
    '%s says what is wrong and how to mend it, each a sentence',
    (code) => {
      const words = WORKSHOP_FAULTS[code]!;
      // Words that tell facts are tried with the facts in the tests of their use cases; here only that they are there.
      if (typeof words === 'function') return expect(words.length).toBeLessThanOrEqual(1);
      expect(words.what).toMatch(/^["“A-Z].*[.!]$/s);
      return expect(words.mend).toMatch(/^[A-Z].*[.!]$/s);
    },
  );

  it('that nobody has words for is still told by its code', () => {
    expect(workshopFaultWords({ code: 'test.unheard-of' }).what).toContain('test.unheard-of');
  });
});
