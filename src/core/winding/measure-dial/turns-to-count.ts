/** How many whole turns to count at a number of the dial, and how well the traverse is then known. */
export interface TurnsToCount {
  readonly turns: number;
  /** About how far the guide goes meanwhile, m. */
  readonly travelM: number;
  /** One standard deviation of the traverse per turn, from the rule alone. */
  readonly share: number;
  /** False where the travel ends before the wanted share is reached. */
  readonly isEnough: boolean;
}

/** Turns are asked for in tens: easily counted, and a turn too many stands out. */
const TURNS_STEP = 10;

/**
 * The least number of turns N at which the reading error of the rule leaves the wanted relative uncertainty:
 * sqrt(2) e / (N p) <= wanted, with e the standard uncertainty of one reading (there are two, start and end,
 * independent: JCGM 100:2008, 5.1.2). Turns are counted whole and have no error of their own. `aboutPerTurnM` is
 * what the dial is thought to give. Held to the travel that there is.
 */
export function turnsToCount(wish: {
  readonly aboutPerTurnM: number;
  readonly readingErrorM: number;
  readonly wantedShare: number;
  readonly travelM: number;
}): TurnsToCount {
  const { aboutPerTurnM, readingErrorM, wantedShare, travelM } = wish;
  const needed = (Math.SQRT2 * readingErrorM) / (wantedShare * aboutPerTurnM);
  const wanted = Math.max(1, Math.ceil(needed / TURNS_STEP - ROUNDING)) * TURNS_STEP;
  const room = Math.floor(travelM / aboutPerTurnM / TURNS_STEP + ROUNDING) * TURNS_STEP;
  const turns = Math.max(TURNS_STEP, Math.min(wanted, room));
  return {
    turns,
    travelM: turns * aboutPerTurnM,
    share: (Math.SQRT2 * readingErrorM) / (turns * aboutPerTurnM),
    isEnough: turns >= needed * (1 - ROUNDING),
  };
}

/** So that a hundred turns that were reckoned as 100.0000001 do not become a hundred and ten. */
const ROUNDING = 1e-9;
