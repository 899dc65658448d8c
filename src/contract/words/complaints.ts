import type { ComplaintFault } from '../../core/stock/index.js';

/** What a player notices, in the shop's own plain words. */
const NAMES: Readonly<Record<ComplaintFault, string>> = {
  dull: 'sounds dull',
  buzzes: 'buzzes or rattles by itself',
  'out-of-tune': 'out of tune along the neck',
  'feels-off': 'slack or stiff beside its neighbours',
  'wrap-loose': 'wrap came loose',
  'broke-at-ball': 'broke at the ball or loop',
  'broke-in-length': 'broke in its length',
  broke: 'broke, not said where',
  corroded: 'stained or rusty on arrival',
  'wrong-string': 'wrong string in the pack',
  other: 'something else',
};

export const complaintFaultInWords = (fault: ComplaintFault): string => NAMES[fault];
