import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { COLOUR_PAIRS } from './colour-pairs.js';
import { contrast } from './contrast.js';

const css = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8');
const guide = readFileSync(new URL('../../../docs/look.md', import.meta.url), 'utf8');

/** The colours that a block of the tokens sets, by their roles. */
function coloursAt(selector: string): ReadonlyMap<string, string> {
  const block = css.slice(css.indexOf(selector)).split('}')[0] ?? '';
  return new Map([...block.matchAll(/--([\w-]+): (#[0-9a-f]{3,6});/g)].map(([, role, hex]) => [role!, hex!]));
}

const THEMES = {
  light: coloursAt(':root {'),
  dark: coloursAt(':root[data-mantine-color-scheme="dark"]'),
  paper: coloursAt('@media print'),
};

const ratio = (theme: keyof typeof THEMES, ink: string, ground: string): number => {
  const colours = THEMES[theme];
  const [one, other] = [colours.get(ink), colours.get(ground)];
  if (one === undefined || other === undefined) throw new Error(`${theme} has no ${ink} or no ${ground}`);
  return contrast(one, other);
};

describe('contrast', () => {
  it('is 21 of black on white and 1 of a colour on itself (WCAG 2.2, definition of contrast ratio)', () => {
    expect(contrast('#000', '#ffffff')).toBeCloseTo(21, 10);
    expect(contrast('#8a2c17', '#8a2c17')).toBe(1);
  });

  it.each([
    ['#949494', 3.03],
    ['#767676', 4.54],
    ['#595959', 7.0],
  ])(
    'of %s on white is %d (Anaminus, Contrast ratios, 2025: greys that are just enough)',
    (grey, published) => {
      expect(contrast(grey, '#ffffff')).toBeCloseTo(published, 2);
    },
  );
});

describe('the colours of the page', () => {
  const cases = COLOUR_PAIRS.flatMap((pair) =>
    (['light', 'dark'] as const).map((theme) => [theme, pair.ink, pair.ground, pair.least] as const),
  );

  it.each(cases)('%s: %s on %s has at least %s to 1', (theme, ink, ground, least) => {
    expect(ratio(theme, ink, ground)).toBeGreaterThanOrEqual(least);
  });

  it('have on paper what they have on the screen', () => {
    for (const { ink, ground, least } of COLOUR_PAIRS)
      if (THEMES.paper.has(ink) && THEMES.paper.has(ground))
        expect(ratio('paper', ink, ground), `${ink} on ${ground}`).toBeGreaterThanOrEqual(least);
  });

  it('are the same roles in each theme', () => {
    expect([...THEMES.dark.keys()]).toEqual([...THEMES.light.keys()]);
    expect([...THEMES.paper.keys()]).toEqual([...THEMES.light.keys()]);
  });

  it('are written down with the ratios that they have', () => {
    for (const { ink, ground, least } of COLOUR_PAIRS) {
      const ratios = (['light', 'dark'] as const).map((theme) => ratio(theme, ink, ground).toFixed(1));
      expect(guide).toContain(`| \`${ink}\` on \`${ground}\` | ${ratios.join(' | ')} | ${least} |`);
    }
  });
});
