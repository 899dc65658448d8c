import { fail, type Result, succeed } from '../../../core/foundation/index.js';
import { readQuantity } from '../../../core/units/index.js';

/** What an instrument may show, and how much of what is kept one of each is. */
const UNITS = {
  diameter: { in: 0.0254, mm: 0.001, thou: 0.0000254 },
  mass: { g: 0.001, kg: 1 },
} as const;

export type InstrumentUnit = 'in' | 'mm' | 'thou' | 'g' | 'kg';

/** A number as typed, and what it is if it stands in this unit. */
export interface InstrumentReading {
  readonly value: number;
  readonly unit: InstrumentUnit;
  /** The figures as typed, without their unit. */
  readonly typed: string;
}

export type InstrumentFault =
  | { readonly code: 'unreadable' }
  /** Far from what is expected as it was typed: what it may be instead, the likely ones first. */
  | { readonly code: 'unlikely'; readonly readings: readonly InstrumentReading[] };

export interface InstrumentRule {
  readonly quantity: keyof typeof UNITS;
  /** What the instrument is set to: of numbers without a unit. */
  readonly unit: InstrumentUnit;
  /** What the string should have, m or kg. */
  readonly expected: number;
}

/** A string is never half or double of what its recipe says; a wrong unit is off by ten times and more. */
const LIKELY = { least: 0.5, most: 2 };

/**
 * What a micrometer or scale typed, in m or kg. A number that is far from the expected is not taken at its word: it may stand in
 * another unit (an inch has 25.4 mm), and the person says which.
 */
export function readInstrument(
  text: string,
  rule: InstrumentRule,
): Result<InstrumentReading, InstrumentFault> {
  const read = readQuantity(text.trim().replace(/^\+/, ''));
  if (!read || !(read.value > 0)) return fail({ code: 'unreadable' });
  const units: Readonly<Record<string, number>> = UNITS[rule.quantity];
  const written = [read.unitText, read.unit].find((unit) => Object.hasOwn(units, unit));
  if (written === undefined && read.unit !== '') return fail({ code: 'unreadable' });
  const typed = String(read.value);
  const inUnit = (unit: string): InstrumentReading => ({
    value: Number((read.value * units[unit]!).toPrecision(12)),
    unit: unit as InstrumentUnit,
    typed,
  });
  const asTyped = inUnit(written ?? rule.unit);
  if (isLikely(asTyped, rule)) return succeed(asTyped);
  const others = Object.keys(units)
    .filter((unit) => unit !== asTyped.unit)
    .map(inUnit)
    .filter((reading) => isLikely(reading, rule));
  return fail({ code: 'unlikely', readings: [...others, asTyped] });
}

const isLikely = ({ value }: InstrumentReading, { expected }: InstrumentRule): boolean =>
  value >= expected * LIKELY.least && value <= expected * LIKELY.most;
