/** A run as the quality room takes it: where and of what it was made, and how its strings came out. */
export interface RunSeen {
  readonly runId: string;
  readonly machineId: string;
  readonly recipeId: string;
  readonly isWound: boolean;
  /** Nobody, where a run was entered without a name. */
  readonly winderId: string | null;
  /** Every lot of wire that went into it. */
  readonly lots: readonly string[];
  readonly at: string;
  /** Days since any fixed day. */
  readonly day: number;
  readonly good: number;
  readonly scrap: number;
  /** Measurements of it, of any kind. */
  readonly readings: number;
  readonly parts: readonly PartSeen[];
}

/** Its strings by one instrument; the first string, wound before anybody could turn anything, apart from the rest. */
export interface PartSeen {
  readonly instrument: string;
  readonly isFirst: boolean;
  /** Strings whose diameter was read; `offM` is their mean less what was wanted, squares are about that mean. */
  readonly strings: number;
  readonly offM: number;
  readonly squaresM2: number;
  /** Squares between places along each string, and their degrees of freedom. */
  readonly alongSquaresM2: number;
  readonly alongDegrees: number;
  /** Strings weighed; their mean weight less what was wanted, as a share of it. */
  readonly weighed: number;
  readonly weightOff: number;
}

/** What can be asked of a run, one figure each. */
export const MEASURES = ['first', 'running', 'along', 'weight'] as const;
export type Measure = (typeof MEASURES)[number];

/** A figure of a run, and how many strings it stands on. */
export interface RunValue {
  readonly run: RunSeen;
  readonly value: number;
  readonly strings: number;
  /** By which most of those strings were measured. */
  readonly instrument: string;
}

/**
 * One figure of each run that has it: `first`, how far its first string was off, m; `running`, the mean of the others, m;
 * `along`, the standard deviation along its strings, m; `weight`, how far their weight was off, as a share.
 */
export const valuesOf = (
  runs: readonly RunSeen[],
  measure: Measure,
  instrument?: string,
): readonly RunValue[] =>
  runs.flatMap((run) => {
    const parts = run.parts.filter((part) => instrument === undefined || part.instrument === instrument);
    const found = FIGURE[measure](parts);
    return found === undefined ? [] : [{ run, ...found }];
  });

type Figure = Omit<RunValue, 'run'> | undefined;

const FIGURE: Readonly<Record<Measure, (parts: readonly PartSeen[]) => Figure>> = {
  first: (parts) => meanOff(parts.filter(({ isFirst }) => isFirst)),
  running: (parts) => meanOff(parts.filter(({ isFirst }) => !isFirst)),
  along: (all) => {
    const parts = all.filter(({ alongDegrees }) => alongDegrees > 0);
    const degrees = sum(parts, ({ alongDegrees }) => alongDegrees);
    if (degrees === 0) return undefined;
    const value = Math.sqrt(sum(parts, ({ alongSquaresM2 }) => alongSquaresM2) / degrees);
    return { value, strings: sum(parts, ({ strings }) => strings), instrument: mostOf(parts) };
  },
  weight: (parts) => {
    const strings = sum(parts, ({ weighed }) => weighed);
    if (strings === 0) return undefined;
    const value = sum(parts, ({ weighed, weightOff }) => weighed * weightOff) / strings;
    return { value, strings, instrument: mostOf(parts) };
  },
};

function meanOff(parts: readonly PartSeen[]): Figure {
  const strings = sum(parts, (part) => part.strings);
  if (strings === 0) return undefined;
  return {
    value: sum(parts, (part) => part.strings * part.offM) / strings,
    strings,
    instrument: mostOf(parts),
  };
}

const mostOf = (parts: readonly PartSeen[]): string =>
  parts.reduce((most, part) => (part.strings > most.strings ? part : most)).instrument;

const sum = (parts: readonly PartSeen[], of: (part: PartSeen) => number): number =>
  parts.reduce((total, part) => total + of(part), 0);
