import { fail, type Result, succeed } from '../foundation/index.js';
import type { StringMaterial } from '../recipes/index.js';
import type { StringEnd } from '../sets/index.js';
import { parseGaugeWithKind } from '../units/index.js';
import { foldName, mostLike } from './likeness.js';
import type { WantedString } from './order.js';
import type { OrderFault, OrderFaultCode } from './resolved.js';

interface CellFault {
  readonly code: OrderFaultCode;
  readonly facts: OrderFault['facts'];
}

/**
 * Gauges of a custom set, given from either side (`10-13-17-26-36-46`, `46 36 26 17 13 10`), treble first in
 * the answer. Parts stand apart by dashes, spaces, commas followed by a space, semicolons or slashes.
 */
export function readGauges(text: string): Result<readonly WantedString[], CellFault> {
  const strings: WantedString[] = [];
  for (const part of splitGauges(text)) {
    const read = parseGaugeWithKind(part);
    if (!read.ok) {
      const ambiguous = read.fault.code === 'unit.ambiguous';
      return fail({
        code: ambiguous ? 'order.cell-ambiguous' : 'order.cell-unreadable',
        facts: { expected: 'gauge', part, readings: read.fault.readings.map((reading) => reading.write) },
      });
    }
    strings.push(read.value);
  }
  if (strings.length === 0) return fail({ code: 'order.cell-unreadable', facts: { expected: 'gauge' } });
  return succeed(trebleFirst(strings));
}

/** Words that people write for a material, bare of signs. Descriptive words only, no one's product names. */
const MATERIAL_WORDS: Readonly<Record<StringMaterial, readonly string[]>> = {
  'plain-steel': ['plain steel', 'steel'],
  'nickel-plated-steel': ['nickel-plated steel', 'nickel plated', 'plated steel', 'nps'],
  'pure-nickel': ['pure nickel', 'nickel'],
  'stainless-steel': ['stainless steel', 'stainless'],
  'phosphor-bronze': ['phosphor bronze', 'phos bronze'],
  'bronze-80-20': [
    '80/20 bronze',
    '80-20 bronze',
    '8020 bronze',
    '80/20',
    '80 20',
    'bronze 80 20',
    'bronze 80/20',
  ],
};

/** The material that a cell names; the fault carries the materials it may have meant. */
export function readMaterial(text: string): Result<StringMaterial, { readonly nearest: readonly string[] }> {
  const wanted = bareWords(text);
  for (const material of Object.keys(MATERIAL_WORDS) as StringMaterial[])
    if (MATERIAL_WORDS[material].some((words) => bareWords(words) === wanted)) return succeed(material);
  return fail({
    nearest: mostLike(
      text,
      Object.values(MATERIAL_WORDS).map((words) => words[0] ?? ''),
      6,
    ),
  });
}

/** Ball ends unless told; undefined where the cell names neither end. */
export function readEnd(text: string): StringEnd | undefined {
  const word = foldName(text).replace(/[\s-]*ends?$/, '');
  return word === '' ? 'ball' : word === 'ball' || word === 'loop' ? word : undefined;
}

/**
 * Parts a list of gauges. `13 1/2` stays one gauge, `26 w` and `17 plain` keep their word, and a comma inside a
 * number is a decimal comma unless a second one follows at once, as no number has two.
 */
function splitGauges(text: string): readonly string[] {
  const commasPart = /\d,\d+,\d/.test(text);
  return text
    .trim()
    .replace(/(\d)\s+1\/2\b/g, '$1½')
    .split(commasPart ? /\s*[–—;/,-]\s*|\s+(?=[.\d])/ : /\s*(?:[–—;/-]|,\s)\s*|\s+(?=[.\d])/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
}

/** Lists that run from thick to thin were given from the bass side. */
function trebleFirst(strings: readonly WantedString[]): readonly WantedString[] {
  const first = strings[0]?.gaugeThou ?? 0;
  const last = strings.at(-1)?.gaugeThou ?? 0;
  return first > last ? [...strings].reverse() : strings;
}

const bareWords = (text: string): string => foldName(text).replace(/[^\p{L}\p{N}]/gu, '');
