import { normalBetween } from '../../stats/index.js';

/** What the run must be like before it is let go. */
export interface DialInAim {
  /** A string is good when its mean diameter is within this of what is wanted. */
  readonly toleranceM: number;
  /** Share of the strings of the run that must be good ... */
  readonly goodShare: number;
  /** ... and how sure that must be. */
  readonly sure: number;
  /** Strings that this position is still to make. */
  readonly stringsToMake: number;
  /** A move must save at least so many strings to be worth the turning. */
  readonly moveWorthStrings: number;
}

/** Workshop values, no source: a gross, 98 in 100 good, sure four times in five. */
export const USUAL_AIM: Omit<DialInAim, 'toleranceM'> = {
  goodShare: 0.98,
  sure: 0.8,
  stringsToMake: 144,
  moveWorthStrings: 0.05,
};

/** How far the process may stand from its aim. */
export interface CentreWindow {
  readonly withinM: number;
  /** False where even a centred process makes fewer good strings than wanted: the window is then a spread wide. */
  readonly capable: boolean;
}

/**
 * The largest offset at which a process of this spread still makes the wanted share of good strings, halving the
 * interval. A process whose spread is too wide cannot be helped by dialling in: it need only be centred.
 */
export function centreWindow(aim: DialInAim, betweenM: number): CentreWindow {
  const good = (offsetM: number): number => goodShareAt(aim, { value: offsetM, u: betweenM });
  let low = 0;
  let high = aim.toleranceM;
  if (good(0) < aim.goodShare) return { withinM: CENTRED_SPREADS * betweenM, capable: false };
  for (let halving = 0; halving < 30; halving++) {
    const middle = (low + high) / 2;
    if (good(middle) >= aim.goodShare) low = middle;
    else high = middle;
  }
  return { withinM: Math.max(low, CENTRED_SPREADS * betweenM), capable: true };
}

/** Nearer than this share of the spread no few strings can tell a process to be. Our own choice. */
const CENTRED_SPREADS = 1.15;

/** Share of strings within tolerance when their means are spread like this. */
export const goodShareAt = (
  aim: Pick<DialInAim, 'toleranceM'>,
  spread: { value: number; u: number },
): number => normalBetween(-aim.toleranceM, aim.toleranceM, spread);
