import { useMemo } from 'react';
import type { Measure } from '../../../core/quality/index.js';
import { thouFromMetres } from '../../../core/units/index.js';
import { type Figures, useFigures } from '../../sight/figures.js';

/** A figure of a run in the person's own units: for an axis, and in words. */
export interface MeasureScale {
  readonly onAxis: (value: number) => number;
  readonly told: (value: number) => string;
  readonly unit: string;
}

export function useMeasureScale(measure: Measure): MeasureScale {
  const figures = useFigures();
  return useMemo(() => scaleOf(measure, figures), [measure, figures]);
}

function scaleOf(measure: Measure, figures: Figures): MeasureScale {
  if (measure === 'weight')
    return {
      onAxis: (value) => value * 100,
      told: (value) => `${figures.number(value * 100, 2)} %`,
      unit: '%',
    };
  const isInch = figures.lengthUnit === 'in';
  return {
    onAxis: (value) => (isInch ? thouFromMetres(value) : value * 1e6),
    told: (value) => figures.slight(value),
    unit: isInch ? 'thou' : 'µm',
  };
}
