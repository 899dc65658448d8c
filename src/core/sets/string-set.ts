import type { GaugeThou, StringMaterial } from '../recipes/index.js';

export type StringEnd = 'ball' | 'loop';

/** A finished string as it lies in a bin: what it is, whatever recipe or run made it. */
export interface StringSpec {
  readonly gaugeThou: GaugeThou;
  readonly kind: 'plain' | 'wound';
  readonly material: StringMaterial;
  readonly end: StringEnd;
  /** Length over all, end to tail. */
  readonly lengthM: number;
}

/** Strings sold together, treble first. */
export interface StringSet {
  readonly id: string;
  readonly name: string;
  readonly version: number;
  readonly strings: readonly StringSpec[];
}

/** Names a kind of string in plain words, the same words for equal strings: the key of bins and balances. */
export const stringKey = (spec: StringSpec): string =>
  `${spec.gaugeThou} ${spec.kind} ${spec.material} ${spec.end} ${Math.round(spec.lengthM * 1000)} mm`;

/** The kind of string that a key names; undefined where `stringKey` did not make it. */
export function readStringKey(key: string): StringSpec | undefined {
  const match = KEY_FORM.exec(key);
  if (!match) return undefined;
  const [, gauge, kind, material, end, millimetres] = match;
  return {
    gaugeThou: Number(gauge),
    kind: kind as StringSpec['kind'],
    material: material as StringMaterial,
    end: end as StringEnd,
    lengthM: Number(millimetres) / 1000,
  };
}

const KEY_FORM = /^(\d+(?:\.\d+)?) (plain|wound) (\S+) (ball|loop) (\d+) mm$/;
