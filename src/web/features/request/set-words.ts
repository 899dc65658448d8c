import { gaugesInWords } from '../../../contract/index.js';
import type { ChosenSet } from '../../../core/sets/index.js';
import { formatGauge } from '../../../core/units/index.js';

/** The gauges of a set, treble first. */
export const gaugesOf = ({ strings }: ChosenSet): string =>
  gaugesInWords(strings.map(({ candidate }) => candidate));

/** `26 wound`; a gauge whose kind is left to the shop is the bare number. */
export const gaugeInWords = (string: {
  readonly gaugeThou: number;
  readonly kind?: 'plain' | 'wound';
}): string => [formatGauge(string.gaugeThou), string.kind].filter(Boolean).join(' ');
