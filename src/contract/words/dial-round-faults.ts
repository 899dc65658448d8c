import type { WordsOfFault } from './shop-wide-faults.js';

/** Refusals about measuring a machine's dial. */
export const DIAL_ROUND_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'dial-round.no-such-dial': ({ machineName, quantity }) => ({
    what: `Machine ${machineName} has no ${quantity === 'pull' ? 'tension scale' : 'dial for its traverse'}.`,
    mend: 'Choose a winding machine; for the traverse, one with a gearbox.',
  }),
  'dial-round.already-open': ({ machineName }) => ({
    what: `This dial of ${machineName} is being measured already.`,
    mend: 'Go on with that round, or give it up first.',
  }),
  'dial-round.too-few-numbers': {
    what: 'One number alone makes no table.',
    mend: 'Name two numbers of the dial at least.',
  },
  'dial-round.not-open': ({ state }) => ({
    what: `This round of measuring is closed: it is ${state}.`,
    mend: 'Begin another.',
  }),
  'dial-round.other-quantity': ({ quantity }) => ({
    what: quantity === 'pull' ? 'This round reads pulls.' : 'This round reads turns and travel.',
    mend: 'Enter what the round asks for.',
  }),
  'dial-round.nothing-moved': ({ dial }) => ({
    what: `By this reading the guide did not move at ${dial}.`,
    mend: 'Read the rule before and after the turns, and enter both.',
  }),
  'dial-round.unfinished': ({ missing }) => ({
    what: `Numbers of the dial are not read yet: ${(missing as readonly number[]).join(', ')}.`,
    mend: 'Read them, or begin another round without them.',
  }),
  'dial-round.all-alike': {
    what: 'By these readings all numbers of the dial give the same.',
    mend: 'Look for slips among the readings, and measure again.',
  },
  'dial-round.changed-since': ({ machineName }) => ({
    what: `The table of ${machineName} was changed after this one was adopted.`,
    mend: 'Change the table by hand, or measure again.',
  }),
};
