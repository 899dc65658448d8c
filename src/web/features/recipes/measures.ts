import type { RecipeChoice } from '../../../core/recipes/index.js';
import { metresFromThou } from '../../../core/units/index.js';

/** By what ways of making a gauge are compared. */
export const MEASURES = [
  'stiffness',
  'inharmonicity',
  'stress',
  'coreRatio',
  'unitWeight',
  'offGauge',
  'cost',
] as const;
export type Measure = (typeof MEASURES)[number];

/** The figure of a choice in SI units, money in minor units; undefined where it is not known. */
export function measured({ figures, offGaugeM }: RecipeChoice, measure: Measure): number | undefined {
  switch (measure) {
    case 'stiffness':
      return figures.bendingStiffnessNM2;
    case 'inharmonicity':
      return figures.inharmonicityB;
    case 'stress':
      return figures.stressShare;
    case 'coreRatio':
      return figures.coreRatio;
    case 'unitWeight':
      return figures.linearDensityKgPerM;
    case 'offGauge':
      return offGaugeM;
    case 'cost':
      return figures.wireCostMinorPerM;
  }
}

/** How a measure is shown: its unit, how many of it make one of the kept unit, and to how many decimals. */
export interface Shown {
  readonly unit: string;
  readonly perKept: number;
  readonly decimals: number;
}

export const shownAs = (measure: Measure, lengthUnit: 'in' | 'mm'): Shown =>
  measure === 'offGauge' && lengthUnit === 'in'
    ? { unit: 'thou', perKept: 1 / metresFromThou(1), decimals: 2 }
    : SHOWN[measure];

const SHOWN: Readonly<Record<Measure, Shown>> = {
  stiffness: { unit: 'N mm²', perKept: 1e6, decimals: 1 },
  inharmonicity: { unit: '10⁻⁶', perKept: 1e6, decimals: 1 },
  stress: { unit: '%', perKept: 100, decimals: 1 },
  coreRatio: { unit: '', perKept: 1, decimals: 3 },
  unitWeight: { unit: 'g/m', perKept: 1000, decimals: 3 },
  offGauge: { unit: 'mm', perKept: 1000, decimals: 4 },
  cost: { unit: '', perKept: 1, decimals: 1 },
};

/** Names a way: its wires, inside outwards. */
export const wayKey = ({
  coreWireId,
  wrapWireIds,
}: Pick<RecipeChoice, 'coreWireId' | 'wrapWireIds'>): string => [coreWireId, ...wrapWireIds].join(' + ');
