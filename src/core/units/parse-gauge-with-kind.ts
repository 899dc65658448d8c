import { fail, type Result, succeed } from '../foundation/index.js';
import { parseGauge } from './parse-gauge.js';
import type { UnitFault } from './unit-fault.js';

/** A gauge as players and makers ask for it: whether plain or wound may be left open. */
export interface GaugeWithKind {
  readonly gaugeThou: number;
  readonly kind?: 'plain' | 'wound';
}

const KIND_WORDS: Readonly<Record<string, 'plain' | 'wound'>> = {
  p: 'plain',
  plain: 'plain',
  unwound: 'plain',
  w: 'wound',
  wound: 'wound',
};

const KIND_AFTER = /(?<![a-z])(p|plain|unwound|w|wound)\.?$/i;
const KIND_BEFORE = /^(plain|unwound|wound)\s/i;

/**
 * A gauge with what stands beside it: `10p`, `26w`, `17 plain`, `26 wound`, `.026" wound`, `wound 26`. The gauge
 * is read as by `parseGauge`; without a word the kind is left out.
 */
export function parseGaugeWithKind(text: string): Result<GaugeWithKind, UnitFault> {
  const { gaugeText, kind } = splitKind(text.trim());
  const gauge = parseGauge(gaugeText);
  if (gauge.ok) return succeed({ gaugeThou: gauge.value, ...(kind && { kind }) });
  // The fault shows what stood in the text, and its readings keep the kind that was asked for.
  const readings = gauge.fault.readings.map((reading) => ({
    ...reading,
    write: kind ? `${reading.write} ${kind}` : reading.write,
  }));
  return fail({ ...gauge.fault, text: text.trim(), readings });
}

function splitKind(text: string): {
  readonly gaugeText: string;
  readonly kind?: 'plain' | 'wound' | undefined;
} {
  const after = KIND_AFTER.exec(text);
  if (after) return { gaugeText: text.slice(0, after.index), kind: KIND_WORDS[after[1]!.toLowerCase()] };
  const before = KIND_BEFORE.exec(text);
  if (before) return { gaugeText: text.slice(before[0].length), kind: KIND_WORDS[before[1]!.toLowerCase()] };
  return { gaugeText: text };
}
