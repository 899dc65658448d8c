import { MATERIAL_NAMES, type StringMaterial } from '../../core/recipes/index.js';
import { readStringKey, type StringEnd, type StringSpec } from '../../core/sets/index.js';
import { formatGauge } from '../../core/units/index.js';

/** A kind of string as people say it, in parts that a document may put where it likes. */
export interface StringWords {
  /** `46 wound`, or `10 plain`. */
  readonly short: string;
  /** `nickel-plated steel`; empty where the key is not one that `stringKey` made. */
  readonly material: string;
  /** `ball end, 1000 mm`. */
  readonly finish: string;
}

/** The words of a string's key; a key of another form is given back whole as `short`. */
export function stringKeyInWords(key: string): StringWords {
  const spec = readStringKey(key);
  if (!spec) return { short: key, material: '', finish: '' };
  const { gaugeThou, kind, material, end, lengthM } = spec;
  return {
    short: `${gaugeThou} ${kind}`,
    material: MATERIAL_NAMES[material] ?? material,
    finish: `${ENDS[end]}, ${Math.round(lengthM * 1000)} mm`,
  };
}

/** `46 wound, nickel-plated steel, ball end, 1000 mm`. */
export function wholeStringInWords(key: string): string {
  const words = stringKeyInWords(key);
  return [words.short, words.material, words.finish].filter((part) => part !== '').join(', ');
}

export const materialInWords = (material: StringMaterial): string => MATERIAL_NAMES[material];

export const endInWords = (end: StringEnd): string => ENDS[end];

/** `10 13 17 26 36 46`: the gauges of a set, treble first, as the trade writes them. */
export const gaugesInWords = (specs: readonly Pick<StringSpec, 'gaugeThou'>[]): string =>
  specs.map((spec) => formatGauge(spec.gaugeThou)).join(' ');

const ENDS: Readonly<Record<StringEnd, string>> = { ball: 'ball end', loop: 'loop end' };
