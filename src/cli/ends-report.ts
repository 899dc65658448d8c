import {
  cautionInWords,
  cutInWords,
  lengthWantedInWords,
  pullInWords,
  tailInWords,
  toPullInWords,
  twistsInWords,
  twistsWhyInWords,
  whipInWords,
} from '../contract/index.js';
import { formatMillimetres } from '../core/units/index.js';
import type { EndSheet } from '../core/winding/index.js';

/** How wire is cut, ended and checked at the bench, as part of a sheet for a person at a terminal. */
export const endsLines = (ends: EndSheet): string =>
  [
    'The end',
    `  cut: ${formatMillimetres(ends.cut.lengthM, 0)} mm = ${cutInWords(ends)}; ${ends.wireM.toFixed(1)} m of wire in all, ${(ends.wireKg * 1000).toFixed(1)} g`,
    `  twist: ${twistsInWords(ends)}. ${twistsWhyInWords(ends)}`,
    `  tail: ${tailInWords(ends)}`,
    'To check',
    `  length: ${lengthWantedInWords(ends)}; turns; tail; that the ${ends.end === 'ball' ? 'ball' : 'eye'} sits straight`,
    `  pull: ${pullInWords(ends.pull)}`,
    `  ${toPullInWords(ends.toPull)}`,
    ...(ends.pull ? [`  ! ${whipInWords(ends.pull)}`] : []),
  ].join('\n');

/** The whole short sheet of cores to be ended for a wound string. */
export const coresReport = (ends: EndSheet, about: string): string =>
  [
    `Cores for ${about}: ${ends.quantity} of ${ends.wireId} (${ends.shape}), ${ends.end} end`,
    ['Before the hand goes in', ...ends.cautions.map(cautionLine)].join('\n'),
    endsLines(ends),
  ].join('\n\n');

const cautionLine = (caution: EndSheet['cautions'][number]): string => {
  const { title, sentence } = cautionInWords(caution);
  return `  ! ${title}. ${sentence}`;
};
