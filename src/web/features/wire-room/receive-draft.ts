import type { InputNamed } from '../../../contract/index.js';
import { metresFromThou, pascalsFromKsi } from '../../../core/units/index.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';

/** A spool at goods-in, as it is typed. */
export interface ReceiveDraft {
  readonly wireId: string;
  readonly name: string;
  readonly lot: string;
  readonly gross: string;
  readonly tare: string;
  readonly certificate: string;
  readonly diameter: string;
  readonly tensile: string;
}

export const GROSS_RULE: AmountRule = { units: { kg: 1, g: 0.001 }, bare: 'kg', least: 0.001, most: 100 };
export const TARE_RULE: AmountRule = { ...GROSS_RULE, least: 0 };
export const DIAMETER_RULE: AmountRule = {
  units: { thou: metresFromThou(1), mm: 0.001, in: 0.0254 },
  bare: 'thou',
  least: metresFromThou(1),
  most: metresFromThou(100),
};
export const TENSILE_RULE: AmountRule = {
  units: { MPa: 1e6, mpa: 1e6, ksi: pascalsFromKsi(1), 'N/mm²': 1e6, 'n/mm²': 1e6 },
  bare: 'MPa',
  least: 50e6,
  most: 5e9,
};

export interface ReadReceipt {
  readonly netKg: number | undefined;
  readonly diameterM: number | undefined;
  readonly tensilePa: number | undefined;
  /** Undefined while something is missing or cannot be read. */
  readonly input: Omit<InputNamed<'receive-spool'>, 'id'> | undefined;
}

/** What a draft says. What is not written of the certificate is left out, never taken for nought. */
export function readReceipt(draft: ReceiveDraft): ReadReceipt {
  const gross = amount(draft.gross, GROSS_RULE);
  const tare = amount(draft.tare, TARE_RULE);
  const diameterM = amount(draft.diameter, DIAMETER_RULE);
  const tensilePa = amount(draft.tensile, TENSILE_RULE);
  const netKg = gross === undefined || tare === undefined ? undefined : gross - tare;
  const isWhole =
    [draft.wireId, draft.name, draft.lot].every((text) => text.trim() !== '') &&
    (diameterM !== undefined || draft.diameter.trim() === '') &&
    (tensilePa !== undefined || draft.tensile.trim() === '');
  const certificate = {
    ...(draft.certificate.trim() === '' ? {} : { number: draft.certificate.trim() }),
    ...(diameterM === undefined ? {} : { diameterM }),
    ...(tensilePa === undefined ? {} : { tensilePa }),
  };
  if (!isWhole || gross === undefined || tare === undefined || gross <= tare) {
    return { netKg, diameterM, tensilePa, input: undefined };
  }
  const input = {
    wireId: draft.wireId,
    name: draft.name.trim(),
    lot: draft.lot.trim(),
    grossKg: gross,
    tareKg: tare,
    ...(Object.keys(certificate).length === 0 ? {} : { certificate }),
  };
  return { netKg, diameterM, tensilePa, input };
}

/** A name that no spool of the wire has yet: the wire's own, and the next number. */
export function nextSpoolName(wireName: string, taken: readonly string[]): string {
  let number = taken.length + 1;
  while (taken.includes(`${wireName} / ${number}`)) number += 1;
  return `${wireName} / ${number}`;
}

function amount(text: string, rule: AmountRule): number | undefined {
  const read = readAmount(text, rule);
  return read.ok ? read.value : undefined;
}
