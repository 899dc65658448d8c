import type { OrderWarning } from '../../core/orders/index.js';
import { formatFraction } from '../../core/units/index.js';
import { forceInWords } from './set-points.js';

/** What a player should be told about an order, as a sentence. */
export function warningInWords(warning: OrderWarning): string {
  switch (warning.code) {
    case 'neck-load':
      return `All strings together pull ${forceInWords(warning.totalN)}, against ${forceInWords(warning.referenceN)} now (${changeInWords(warning.totalN / warning.referenceN - 1)}): the neck may need setting.`;
    case 'octaves-assumed':
      return `The tuning was written without octaves and read as ${warning.tuning}.`;
    case 'slack':
      return `String ${warning.position} will be slack: it pulls ${forceInWords(warning.tensionN)}, less than ${forceInWords(warning.leastN)}.`;
    case 'near-strength':
      return `String ${warning.position} will stand at ${formatFraction(warning.stressShare)} of its wire’s least strength: tune it up slowly, eyes away from it.`;
  }
}

const changeInWords = (share: number): string =>
  share >= 0 ? `${formatFraction(share)} more` : `${formatFraction(-share)} less`;
