import { fail, type Result, succeed } from '../foundation/index.js';
import { readQuantity } from './quantity-text.js';
import type { ExpectedQuantity, UnitFault, UnitReading } from './unit-fault.js';

/** How texts of one kind of quantity are read. */
export interface ReadingRule {
  readonly expected: ExpectedQuantity;
  readonly siUnit: 'm' | 'N';
  /** SI units in one of each unit that may be written. */
  readonly siPerUnit: Readonly<Record<string, number>>;
  /** Units that a number without a unit may stand for, where only one of them makes it plausible. */
  readonly bareUnits: readonly string[];
  /** What is plausible, in SI units, both ends included. */
  readonly least: number;
  readonly most: number;
}

/**
 * The quantity, in SI units, that a text states. With a unit it is taken at its word; without one it is taken
 * only where exactly one of the rule's bare units gives a plausible quantity. Never a guess: else a fault with
 * all readings.
 */
export function readWithin(rule: ReadingRule, text: string): Result<number, UnitFault> {
  const refuse = (code: UnitFault['code'], readings: readonly UnitReading[] = [], wrongUnit?: string) =>
    fail<UnitFault>({
      code,
      text: text.trim(),
      expected: rule.expected,
      readings,
      ...(wrongUnit === undefined ? {} : { wrongUnit }),
    });
  const quantity = readQuantity(text);
  if (!quantity) return refuse('unit.unreadable');
  const { value, decimals, unit } = quantity;
  const written = trimmedDigits(value, decimals);
  const readingIn = (name: string): UnitReading => {
    const size = clean(value * rule.siPerUnit[name]!);
    const plausible = size >= rule.least && size <= rule.most;
    return { value: size, unit: rule.siUnit, write: `${written} ${name}`, plausible };
  };
  if (unit !== '') {
    if (!Object.hasOwn(rule.siPerUnit, unit)) return refuse('unit.unreadable', [], quantity.unitText);
    const stated = readingIn(unit);
    return stated.plausible ? succeed(stated.value) : refuse('unit.out-of-range', [stated]);
  }
  const bare = rule.bareUnits.map(readingIn).filter(({ plausible }) => plausible);
  if (bare.length === 1) return succeed(bare[0]!.value);
  const plausible = Object.keys(rule.siPerUnit)
    .map(readingIn)
    .filter((reading) => reading.plausible);
  if (plausible.length > 0) return refuse('unit.ambiguous', plausible);
  return refuse('unit.out-of-range', rule.bareUnits.map(readingIn));
}

/** Takes off the last bits that a conversion leaves: 64.8 cm is 0.648 m. Far below any measurement. */
const clean = (size: number): number => Number(size.toPrecision(14));

const trimmedDigits = (value: number, decimals: string | undefined): string =>
  decimals === undefined ? String(value) : value.toFixed(decimals.length);
