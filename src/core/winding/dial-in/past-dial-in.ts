/** A dial-in that is over: what it leaves to those that come after it. */
export interface PastDialIn {
  readonly machineId: string;
  /** Strings that are alike to the machine: its own sort of core and wrap, of neighbouring sizes. */
  readonly family: string;
  /** Diameter gained by one unit of setting, as it had been reckoned beforehand. */
  readonly responseMPerUnit: number;
  readonly positions: readonly PastPosition[];
}

export interface PastPosition {
  /** The setting at which the error had been reckoned to be nought. */
  readonly reckonedSetting: number;
  readonly strings: readonly PastString[];
  /** Mean errors of the first strings at settings that a winder had chosen against the advice, m. */
  readonly overrideErrorsM: readonly number[];
}

export interface PastString {
  readonly setting: number;
  /** At each place measured. */
  readonly errorsM: readonly number[];
}

/** Runs that are leaned on at most, and strings of each position of a run: the last made are nearest the aim. */
const MOST_RUNS = 8;
const MOST_STRINGS = 6;

/**
 * The runs that tell most of one to come, nearest last: of the same machine and family before those of the machine
 * alone, those before the family's on other machines, and newer before older. `past` stands in order of time.
 */
export function nearestPast(
  past: readonly PastDialIn[],
  run: Pick<PastDialIn, 'machineId' | 'family'>,
): readonly PastDialIn[] {
  const kinship = (one: PastDialIn): number =>
    (one.machineId === run.machineId ? 2 : 0) + (one.family === run.family ? 1 : 0);
  return past
    .filter((one) => kinship(one) > 0)
    .sort((one, other) => kinship(one) - kinship(other))
    .slice(-MOST_RUNS)
    .map((one) => ({
      ...one,
      positions: one.positions.map((each) => ({ ...each, strings: each.strings.slice(-MOST_STRINGS) })),
    }));
}
