import { endInWords, gaugesInWords, materialInWords } from '../../../contract/index.js';
import type { StringSpec } from '../../../core/sets/index.js';
import type { FieldWords } from '../../parts/fields-apart.js';
import type { Figures } from '../../sight/figures.js';
import type { SETS_WORDS } from '../../words/sets.js';
import { gaugeInWords } from '../request/set-words.js';
import type { SetRecord } from './set-draft.js';

/** Of what its wound strings are, or its plain ones where it has no other. */
export function woundIn(strings: readonly StringSpec[]): string {
  const wound = strings.filter(({ kind }) => kind === 'wound');
  const named = wound.length > 0 ? wound : strings;
  return [...new Set(named.map(({ material }) => materialInWords(material)))].join(', ');
}

/** A set field by field, to be laid beside another version of it. */
export const fieldsOfSet = (
  { name, strings }: SetRecord['body'],
  words: (typeof SETS_WORDS)['en']['versions'],
  figures: Pick<Figures, 'length'>,
): readonly FieldWords[] => [
  { name: words.name, value: name },
  ...strings.map((spec, at) => ({
    name: words.string(at + 1),
    value: [
      gaugeInWords(spec),
      materialInWords(spec.material),
      endInWords(spec.end),
      figures.length(spec.lengthM),
    ].join(', '),
  })),
];

/** Whether a text is in a set's name, or names its gauges. */
export function holdsText({ name, strings }: SetRecord['body'], text: string): boolean {
  const wanted = text.trim().toLowerCase();
  if (wanted === '') return true;
  const gauges = gaugesInWords(strings);
  return [name.toLowerCase(), gauges, gauges.replaceAll(' ', '-')].some((held) => held.includes(wanted));
}
