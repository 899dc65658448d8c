/** What a stage took in, and how much of it was right the first time, nothing mended. */
export interface StageCount {
  readonly entered: number;
  readonly rightFirst: number;
}

/** Share right the first time; what was mended does not count. */
export const firstPassYield = ({ entered, rightFirst }: StageCount): number => rightFirst / entered;

/** Chance to come through all stages right the first time: the product of their yields. */
export const rolledYield = (stages: readonly StageCount[]): number =>
  stages.reduce((product, stage) => product * firstPassYield(stage), 1);

/** Share without a fault where faults fall by chance, so many per unit on average: exp(-faults per unit) (Poisson). */
export const yieldOfFaults = (faultsPerUnit: number): number => Math.exp(-faultsPerUnit);
