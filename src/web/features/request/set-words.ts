import { gaugesInWords } from '../../../contract/index.js';
import type { ChosenSet } from '../../../core/sets/index.js';
import { neckLoad } from '../../../core/string/index.js';
import { formatFraction, formatGauge } from '../../../core/units/index.js';

/** The gauges of a set, treble first. */
export const gaugesOf = ({ strings }: ChosenSet): string =>
  gaugesInWords(strings.map(({ candidate }) => candidate));

/** `26 wound`; a gauge whose kind is left to the shop is the bare number. */
export const gaugeInWords = (string: {
  readonly gaugeThou: number;
  readonly kind?: 'plain' | 'wound';
}): string => [formatGauge(string.gaugeThou), string.kind].filter(Boolean).join(' ');

/** How a neck load stands against the one it was set for. */
export function changeInWords(totalN: number, referenceN: number): string {
  const { changeShare = 0 } = neckLoad([{ tensionN: totalN }], [{ tensionN: referenceN }]);
  const words = formatFraction(Math.abs(changeShare), 1);
  return `${words} ${changeShare >= 0 ? 'more' : 'less'} than what is liked`;
}
