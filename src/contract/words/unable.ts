import { formatGauge, formatMillimetres, formatThou } from '../../core/units/index.js';
import type { UnableReason } from '../../core/winding/index.js';

/** Why a machine cannot make a string, as the second half of a sentence that begins with the machine's name. */
export function unableInWords(reason: UnableReason): string {
  switch (reason.code) {
    case 'winding.wrong-station':
      return reason.needs === 'winder' ? 'does not wind' : 'does not cut plain strings';
    case 'winding.string-too-long':
      return `takes strings up to ${formatMillimetres(reason.mostM, 0)} mm, not ${formatMillimetres(reason.lengthM, 0)} mm`;
    case 'winding.string-too-short':
      return `needs at least ${formatMillimetres(reason.leastM, 0)} mm of string, not ${formatMillimetres(reason.lengthM, 0)} mm`;
    case 'winding.gauge-out-of-range':
      return `makes gauges ${formatGauge(reason.leastThou)} to ${formatGauge(reason.mostThou)}, not ${formatGauge(reason.gaugeThou)}`;
    case 'winding.core-size-out-of-range':
      return `takes cores of ${formatThou(reason.leastM)} to ${formatThou(reason.mostM)} thou, not ${formatThou(reason.sizeM)}`;
    case 'winding.core-shape-not-possible':
      return `does not hold ${reason.shape === 'hex' ? 'hexagonal' : 'round'} core`;
    case 'winding.wrap-out-of-range':
      return `takes wrap of ${formatThou(reason.leastM)} to ${formatThou(reason.mostM)} thou, not ${formatThou(reason.diameterM)}`;
    case 'winding.too-many-layers':
      return `winds ${reason.most === 1 ? 'one layer' : `${reason.most} layers`}, not ${reason.layers}`;
    case 'winding.end-not-possible':
      return `makes no ${reason.end} ends`;
    case 'winding.twists-out-of-range':
      return `twists ${reason.least} to ${reason.most} turns, not ${reason.twists}`;
    case 'winding.cut-out-of-range':
      return `cuts pieces of ${formatMillimetres(reason.leastM, 0)} to ${formatMillimetres(reason.mostM, 0)} mm, not ${formatMillimetres(reason.cutM, 0)} mm`;
    case 'winding.construction-unsound':
      return `cannot, since no such string can be made (${reason.fault.code})`;
    case 'winding.pitch-outside-range':
      return `gives wrap pitches of ${formatMillimetres(reason.leastM)} to ${formatMillimetres(reason.mostM)} mm, not ${formatMillimetres(reason.wantedM)} mm`;
    case 'winding.dial-table-unusable':
      return 'has a dial table that cannot be used: it needs two rows or more, ascending, all rising or all falling';
    case 'winding.spindle-too-fast':
      return `cannot turn slower than ${Math.round(reason.slowestRpm)} rpm, and ${reason.limitedBy === 'whirl' ? 'whirl' : 'the speed of the wire'} allows ${Math.round(reason.limitRpm)}`;
  }
}

/** The same in a word or two, from its code alone. */
export const unableInShort = (code: string): string => SHORT[code as UnableReason['code']] ?? code;

const SHORT: Readonly<Record<UnableReason['code'], string>> = {
  'winding.wrong-station': 'made for other work',
  'winding.string-too-long': 'string too long',
  'winding.string-too-short': 'string too short',
  'winding.gauge-out-of-range': 'gauge out of its range',
  'winding.core-size-out-of-range': 'core out of its range',
  'winding.core-shape-not-possible': 'wrong shape of core',
  'winding.wrap-out-of-range': 'wrap out of its range',
  'winding.too-many-layers': 'too many layers',
  'winding.end-not-possible': 'no such ends',
  'winding.twists-out-of-range': 'twist out of its range',
  'winding.cut-out-of-range': 'piece out of its range',
  'winding.construction-unsound': 'no such string can be made',
  'winding.pitch-outside-range': 'wrap pitch out of its range',
  'winding.dial-table-unusable': 'dial table unusable',
  'winding.spindle-too-fast': 'turns too fast for it',
};
