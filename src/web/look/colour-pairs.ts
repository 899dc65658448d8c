/** What stands on what, and the least contrast that it must have (WCAG 2.2, 1.4.3 for words and 1.4.11 for signs). */
export interface ColourPair {
  readonly ink: string;
  readonly ground: string;
  readonly least: 4.5 | 3;
}

/** Words of every size are held to what small words need: nobody has to ask how large they are. */
const WORDS = 4.5;
/** Lines without which one would not see a field or a mark. Rules between rows are not: the rows stand apart without them. */
const SIGNS = 3;

export const COLOUR_PAIRS: readonly ColourPair[] = [
  { ink: 'ink', ground: 'paper', least: WORDS },
  { ink: 'ink', ground: 'paper-raised', least: WORDS },
  { ink: 'ink', ground: 'paper-sunk', least: WORDS },
  { ink: 'ink-quiet', ground: 'paper', least: WORDS },
  { ink: 'ink-quiet', ground: 'paper-raised', least: WORDS },
  { ink: 'ink-quiet', ground: 'paper-sunk', least: WORDS },
  { ink: 'accent', ground: 'paper', least: WORDS },
  { ink: 'accent', ground: 'paper-raised', least: WORDS },
  { ink: 'accent', ground: 'paper-sunk', least: WORDS },
  { ink: 'accent', ground: 'accent-soft', least: WORDS },
  { ink: 'ink', ground: 'accent-soft', least: WORDS },
  { ink: 'ink', ground: 'tone', least: WORDS },
  { ink: 'on-ink', ground: 'ink', least: WORDS },
  { ink: 'on-ink', ground: 'ink-quiet', least: WORDS },
  { ink: 'on-ink', ground: 'accent', least: WORDS },
  { ink: 'rule-strong', ground: 'paper', least: SIGNS },
  { ink: 'rule-strong', ground: 'paper-raised', least: SIGNS },
  { ink: 'metal-core', ground: 'metal-wrap', least: SIGNS },
];
