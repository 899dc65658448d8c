import { compensatedSum } from '../numeric/index.js';
import { roundHalfEvenMinor, shareMinor } from '../units/index.js';

/** What something costs, by part, in minor units of the shop's money. */
export interface CostParts {
  readonly wireMinor: number;
  readonly endsMinor: number;
  readonly packMinor: number;
  readonly labourMinor: number;
  readonly overheadMinor: number;
  /** Strings that are made and thrown away. */
  readonly scrapMinor: number;
}

/** Costs in fractions of a minor unit, as they are added up; rounded once, at the end, by `settle`. */
export interface UnsettledCosts extends CostParts {
  readonly byWire: readonly WireCost[];
}

/** Costs in whole minor units: the parts sum to the total, and the wires to the wire part, exactly. */
export interface Costs extends CostParts {
  readonly byWire: readonly WireCost[];
  readonly totalMinor: number;
}

export interface WireCost {
  readonly wireId: string;
  readonly minor: number;
}

export const NO_COSTS: UnsettledCosts = {
  wireMinor: 0,
  endsMinor: 0,
  packMinor: 0,
  labourMinor: 0,
  overheadMinor: 0,
  scrapMinor: 0,
  byWire: [],
};

/**
 * Whole minor units. The total is the sum of the unrounded parts, a half rounded to even; it is then shared
 * out over the parts (and the wire part over the wires) by largest remainder, so that they always sum to it.
 */
export function settle(costs: UnsettledCosts): Costs {
  const totalMinor = roundHalfEvenMinor(unsettledTotal(costs));
  const shares = shareMinor(
    totalMinor,
    PARTS.map((part) => costs[part]),
  );
  const parts = Object.fromEntries(PARTS.map((part, index) => [part, shares[index]!])) as Record<
    Part,
    number
  >;
  const wires =
    costs.byWire.length === 0
      ? []
      : shareMinor(
          parts.wireMinor,
          costs.byWire.map(({ minor }) => minor),
        );
  return {
    ...parts,
    byWire: costs.byWire.map(({ wireId }, index) => ({ wireId, minor: wires[index]! })),
    totalMinor,
  };
}

/** Sum of all parts, not rounded. */
export const unsettledTotal = (costs: CostParts): number => compensatedSum(PARTS.map((part) => costs[part]));

/** Costs of several things together; of one wire in several of them, together. */
export function addCosts(costs: readonly UnsettledCosts[]): UnsettledCosts {
  const byWire = new Map<string, number>();
  for (const { wireId, minor } of costs.flatMap((each) => each.byWire)) {
    byWire.set(wireId, (byWire.get(wireId) ?? 0) + minor);
  }
  return {
    ...partsFrom((part) => compensatedSum(costs.map((each) => each[part]))),
    byWire: [...byWire].map(([wireId, minor]) => ({ wireId, minor })),
  };
}

/** Costs of `count` of the same thing. */
export const timesCosts = (costs: UnsettledCosts, count: number): UnsettledCosts => ({
  ...partsFrom((part) => costs[part] * count),
  byWire: costs.byWire.map(({ wireId, minor }) => ({ wireId, minor: minor * count })),
});

type Part = keyof CostParts;

const PARTS = [
  'wireMinor',
  'endsMinor',
  'packMinor',
  'labourMinor',
  'overheadMinor',
  'scrapMinor',
] as const satisfies readonly Part[];

const partsFrom = (minorOf: (part: Part) => number): CostParts =>
  Object.fromEntries(PARTS.map((part) => [part, minorOf(part)])) as unknown as CostParts;
