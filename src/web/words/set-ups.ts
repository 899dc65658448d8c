import type { ChangeKind } from '../../core/winding/index.js';
import { wordsIn } from './language.js';

/** What the shop's own set-ups teach of scrap and time. */
export const SET_UPS_WORDS = wordsIn({
  en: {
    title: 'What changes really cost here',
    lead: 'Scrap and minutes of a set-up by what was changed, as your shop’s own runs have them. The figures on record above are where it begins; with five set-ups of a kind the plan and the costs go by what was learned.',
    what: 'what set-ups teach',
    none: 'No closed run with trial strings tells yet what a change takes on this machine. The plan goes by its record.',
    kinds: {
      length: 'length',
      core: 'core',
      wrap: 'wrap',
      'core+wrap': 'core and wrap',
      'wrap+alloy': 'wrap and metal',
      'core+wrap+alloy': 'core, wrap and metal',
    } satisfies Readonly<Record<ChangeKind, string>>,
    columns: {
      kind: 'Changed',
      setUps: 'Set-ups',
      scrap: 'Scrap, strings',
      minutes: 'Minutes',
      used: 'The plan goes by',
    },
    used: 'what was learned',
    notUsed: 'the record',
    notTold: 'not told',
    scrapName: (kind: string) => `Scrap after a change of ${kind}`,
    minutesName: (kind: string) => `Minutes of a change of ${kind}`,
    scrapWhat: 'Strings to expect as scrap from the start of the run until it is let run.',
    minutesWhat: 'Minutes to expect from the start of the run until it is let run.',
    scrapFormula:
      'gamma-Poisson: (prior shape + strings scrapped) ÷ (prior rate + strings expected by the record) × the record',
    minutesFormula:
      'log-normal: exp(mean of ln(minutes ÷ record), drawn towards the machine’s, + half the variances) × the record',
    inputs: {
      record: 'by the machine’s record',
      setUps: 'set-ups',
      from: 'nine in ten: from',
      to: 'to',
    },
    source: (setUps: string, kind: string, machine: string) =>
      `Your shop’s ${setUps} changes of ${kind} on ${machine}.`,
    causes: 'Scrap by cause',
    causesLead:
      'All that was scrapped in those runs, by the winder’s word: while setting up, and once the run was let run.',
    causeColumns: { reason: 'Cause', kind: 'After a change of', inSetUp: 'Setting up', after: 'In the run' },
    learnedName: (kind: string, machine: string) => `changes of ${kind} on ${machine}`,
    learnedValue: (setUps: string, times: string) => `${setUps} set-ups: ${times} times the record`,
  },
});
