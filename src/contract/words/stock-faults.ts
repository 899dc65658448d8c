import { countInWords } from './lists.js';
import type { WordsOfFault } from './shop-wide-faults.js';
import { wholeStringInWords } from './strings.js';

/** Refusals about spools, bins and lots. */
export const STOCK_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'stock.overdrawn': ({ account, item, missing }) => ({
    what: `The books have too little there: ${account} lacks ${missing} of ${item}.`,
    mend: 'Someone may have taken it since you looked. Count or weigh what lies there, then try again.',
  }),
  'spool.nothing-on-it': ({ grossKg, tareKg }) => ({
    what: `The spool weighs ${grossKg} kg and ${tareKg} kg empty, so there is no wire on it.`,
    mend: 'Weigh again, and check the weight of the empty spool.',
  }),
  'spool.lighter-than-empty': ({ spoolName, grossKg, tareKg }) => ({
    what: `Spool ${spoolName} weighs ${grossKg} kg, less than the ${tareKg} kg of the empty spool.`,
    mend: 'Weigh again, and see that it is the right spool.',
  }),
  'spool.heavier-than-before': ({ spoolName, grossKg, beforeKg }) => ({
    what: `Spool ${spoolName} weighs ${grossKg} kg, more than the ${beforeKg} kg at its last weighing. Wire does not grow.`,
    mend: 'See that it is the right spool and weigh again. If the last weighing was wrong, weigh the spool by itself (not within a run) and give that as the reason.',
  }),
  'spool.empty': ({ spoolName }) => ({
    what: `Spool ${spoolName} is empty.`,
    mend: 'Choose another spool.',
  }),
  'spool.in-run': ({ spoolName, runName }) => ({
    what: `Spool ${spoolName} is on the machine for run ${runName}.`,
    mend: 'Change the spool in that run, or close the run: both take it off by weight.',
  }),
  'bin.same': ({ binName }) => ({
    what: `The strings lie in bin ${binName} already.`,
    mend: 'Choose another bin.',
  }),
  'bin.for-other-strings': ({ binName, holds, stringKey }) => ({
    what: `Bin ${binName} is for ${wholeStringInWords(String(holds))}, not for ${wholeStringInWords(String(stringKey))}.`,
    mend: 'Choose a bin for these strings, or one that is for none in particular.',
  }),
  'bin.too-few': ({ binName, lotName, there, wanted }) => ({
    what: `Bin ${binName} holds ${countInWords(Number(there), 'string')} of lot ${lotName}, not ${wanted}.`,
    mend: 'Take fewer, or count the bin if more lie there.',
  }),
  'lot.on-hold': ({ lotName, holdReason, binName }) => ({
    what: `Lot ${lotName} is on hold (${holdReason}), and other strings lie in bin ${binName}.`,
    mend: 'Move it to a bin of its own, or release it first.',
  }),
};
