import { formatGauge, formatMillimetres } from '../../core/units/index.js';
import type { ImpossibleReading, UnableReason } from '../../core/winding/index.js';
import { impossibleInWords } from './ends.js';
import { countInWords, listInWords } from './lists.js';
import type { WordsOfFault } from './shop-wide-faults.js';
import { materialInWords } from './strings.js';
import { unableInWords } from './unable.js';

/** Refusals about recipes, runs and tallies. */
export const PRODUCTION_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'recipe.unsound': ({ recipeName, fault }) => ({
    what: `No string can be made by recipe ${recipeName} (${(fault as { readonly code: string }).code}).`,
    mend: 'Check the sizes: they are in metres.',
  }),
  'recipe.wraps-missing': ({ recipeName, layers, wires }) => ({
    what: `Recipe ${recipeName} has ${countInWords(Number(layers), 'layer')} of wrap and names ${countInWords(Number(wires), 'wire')} for them.`,
    mend: 'Name one wire for each layer, from the core outwards; none for a plain string.',
  }),
  'recipe.other-wire': ({ recipeName, piece, wireName, wanted }) => ({
    what: `Recipe ${recipeName} takes ${wireInWords(wanted)} as ${pieceInWords(piece)}, and ${wireName} is another wire.`,
    mend: 'Name the wire that it takes, or amend the size or alloy in the recipe.',
  }),
  'run.recipe-retired': ({ recipeName }) => ({
    what: `Recipe ${recipeName} is retired.`,
    mend: 'Plan the run by another recipe, or revive this one.',
  }),
  'run.recipe-makes-others': ({ recipeName, gaugeThou, material }) => ({
    what: `Recipe ${recipeName} makes ${formatGauge(Number(gaugeThou))} in ${materialInWords(material as never)}, not the strings of this run.`,
    mend: 'Choose a recipe for these strings.',
  }),
  'run.no-such-layer': ({ layers }) => ({
    what: `The string of this run has ${countInWords(Number(layers), 'layer')} of wrap.`,
    mend: 'Say the settings of these layers, from the core outwards.',
  }),
  'run.machine-unable': ({ machineName, recipeName, reasons }) => ({
    what: `Machine ${machineName} cannot make recipe ${recipeName}: it ${listInWords((reasons as readonly UnableReason[]).map(unableInWords))}.`,
    mend: 'Choose another machine, or amend what its record says that it can.',
  }),
  'run.machine-busy': ({ machineName, runName }) => ({
    what: `Machine ${machineName} is making run ${runName}.`,
    mend: 'Close or pause that run first.',
  }),
  'run.spool-elsewhere': ({ spoolName, machineName }) => ({
    what: `Spool ${spoolName} is on machine ${machineName}.`,
    mend: 'Take another spool, or take it off there first.',
  }),
  'run.spool-not-usable': ({ spoolName, state }) => ({
    what: `Spool ${spoolName} cannot be mounted: it is ${state}.`,
    mend: 'Take another spool.',
  }),
  'run.spool-of-other-wire': ({ spoolName, wireName, wantedNames }) => ({
    what: `Spool ${spoolName} holds ${wireName}; wanted is ${(wantedNames as readonly string[]).join(' or ')}.`,
    mend: 'Take a spool of the wire that is wanted.',
  }),
  'run.spool-missing': ({ wireName }) => ({
    what: `No spool of ${wireName} was named.`,
    mend: 'Mount one spool at least of every wire of the recipe.',
  }),
  'run.spool-not-on-it': ({ spoolName, runName }) => ({
    what: `Spool ${spoolName} is not on the machine for run ${runName}.`,
    mend: 'Name a spool that the run is winding from.',
  }),
  'run.spool-on-it': ({ spoolName, runName }) => ({
    what: `Spool ${spoolName} is on the machine for run ${runName} already.`,
    mend: 'Name the spool that takes the place of the old one.',
  }),
  'run.not-live': ({ runName, state }) => ({
    what: `Run ${runName} is ${state}; this can only be done while it is running or paused.`,
    mend: 'Start the run first. What is closed stays closed: plan another run.',
  }),
  'run.more-than-wire': ({ wireName, strings, neededMg, takenMg }) => ({
    what: `${countInWords(Number(strings), 'string')} need ${grams(neededMg)} g of ${wireName} at least, and ${grams(takenMg)} g of it can have been taken.`,
    mend: 'Check the counts, and weigh the spools of that wire: what is weighed stands.',
  }),
  'run.no-such-position': ({ machineName, position, positions }) => ({
    what: `Machine ${machineName} makes ${positions} at once, so it has no position ${position}.`,
    mend: 'Name position 1.',
  }),
  'entry.run-over': ({ runName, state }) => ({
    what: `Run ${runName} is ${state}: what was entered for it is settled and cannot be taken back.`,
    mend: 'Its strings lie in a bin as a lot: count that bin, or scrap strings of the lot with the reason. A reading that is far off counts for little by itself.',
  }),
  'entry.lot-judged': ({ lotName, state }) => ({
    what: `Lot ${lotName} is ${state}: what coiling counted of it is settled and cannot be taken back.`,
    mend: 'Hold the lot first and look at it again, or count the bin that it lies in.',
  }),
  'end-check.empty': {
    what: 'Nothing was found of this end.',
    mend: 'Give a length, a count of twists, a tail, how it sits, or a pull.',
  },
  'end-check.not-a-bench': ({ machineName }) => ({
    what: `${machineName} makes no ends: it is no bench.`,
    mend: 'Name the bench where the end was made.',
  }),
  'end-check.impossible': (fault) => impossibleInWords(fault as unknown as ImpossibleReading),
  'tally.of-nothing': {
    what: 'The count names neither a run nor a lot.',
    mend: 'Say what was counted.',
  },
  'tally.without-reason': {
    what: 'Scrap is counted without a reason.',
    mend: 'Say what was wrong with it, in a word or two.',
  },
};

const grams = (mg: unknown): string => (Number(mg) / 1000).toFixed(1);

const pieceInWords = (piece: unknown): string =>
  ({ core: 'core', 'wrap-1': 'its first wrap', 'wrap-2': 'its second wrap' })[String(piece)] ?? String(piece);

function wireInWords(wanted: unknown): string {
  const { sizeM, alloy, shape } = wanted as { sizeM: number; alloy: string; shape: string };
  return `${formatMillimetres(sizeM)} mm ${shape} ${alloy.replaceAll('-', ' ')}`;
}
