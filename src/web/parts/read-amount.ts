import { fail, type Result, succeed } from '../../core/foundation/index.js';
import { readQuantity } from '../../core/units/index.js';

/** How a number that a person types is to be read. */
export interface AmountRule {
  /** How much of what is kept one of each unit is, by the unit as it is written: `{ kg: 1, g: 0.001 }`. */
  readonly units: Readonly<Record<string, number>>;
  /** What a number without a unit is taken for: a key of `units`. */
  readonly bare: string;
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
}

export type AmountFault =
  | { readonly code: 'unreadable' }
  | { readonly code: 'unit'; readonly unit: string }
  | { readonly code: 'whole' }
  | { readonly code: 'range'; readonly least: number; readonly most: number };

/** The amount that a text states, in the unit that is kept: decimal point or comma, with its unit or without. */
export function readAmount(text: string, rule: AmountRule): Result<number, AmountFault> {
  const read = readQuantity(text);
  if (!read) return fail({ code: 'unreadable' });
  const unit = [read.unitText, read.unit, read.unit === '' ? rule.bare : undefined].find(
    (name) => name !== undefined && Object.hasOwn(rule.units, name),
  );
  if (unit === undefined) return fail({ code: 'unit', unit: read.unitText });
  const amount = tidy(read.value * rule.units[unit]!);
  if (rule.whole && !Number.isInteger(amount)) return fail({ code: 'whole' });
  if (amount < rule.least || amount > rule.most) {
    const inBare = (kept: number): number => tidy(kept / rule.units[rule.bare]!);
    return fail({ code: 'range', least: inBare(rule.least), most: inBare(rule.most) });
  }
  return succeed(amount);
}

/** Takes off the last bits that a conversion leaves. */
const tidy = (amount: number): number => Number(amount.toPrecision(14));
