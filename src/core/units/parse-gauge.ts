import { fail, type Result, succeed } from '../foundation/index.js';
import { type QuantityText, readQuantity } from './quantity-text.js';
import type { UnitFault, UnitReading } from './unit-fault.js';

/**
 * Plausible gauges of finished strings, thou: the thinnest plain wire in use is about 7, the thickest bass string
 * about 145 (common practice, no source). As inches written in full they run from 0.005 to 0.200, as thous from 5:
 * the two never meet, so a bare number is one or the other. A bare number is never millimetres.
 */
export const GAUGE_RANGE_THOU = { least: 5, most: 200 } as const;

/** A bare decimal below one is inches only when written to thous: `.010`. `.10` may be a 100 or a slip for 10. */
const DECIMALS_OF_INCHES = 3;

/** Exact, as the inch is 25.4 mm. */
const MILLIMETRES_PER_THOU = 0.0254;

/**
 * A string's gauge, thousandths of an inch of finished diameter: `10`, `010`, `.010`, `0.010"`, `13.5`, `13½`,
 * `13 1/2`, `10 thou`, `0.254 mm`, `0,254 mm`. Millimetres written to two decimals or more give the half thou that
 * rounds to them where there is one (0.33 mm is a 13), else the exact figure. What may be read in two ways is
 * refused with both.
 */
export function parseGauge(text: string): Result<number, UnitFault> {
  const refuse = (code: UnitFault['code'], readings: readonly UnitReading[] = [], wrongUnit?: string) =>
    fail<UnitFault>({
      code,
      text: text.trim(),
      expected: 'gauge',
      readings,
      ...(wrongUnit === undefined ? {} : { wrongUnit }),
    });
  const quantity = readQuantity(text);
  if (!quantity) return refuse('unit.unreadable');
  const reading = quantity.unit === '' ? bareReading(quantity) : statedReading(quantity);
  if (reading) return reading.plausible ? succeed(reading.value) : refuse('unit.out-of-range', [reading]);
  if (quantity.unit !== '') return refuse('unit.unreadable', [], quantity.unitText);
  const readings = possibleReadings(quantity);
  const plausible = readings.some((possible) => possible.plausible);
  return refuse(plausible ? 'unit.ambiguous' : 'unit.out-of-range', readings);
}

/** Taken at its word; undefined where the unit is none of a diameter. */
function statedReading(quantity: QuantityText): UnitReading | undefined {
  if (quantity.unit === 'thou') return asThou(quantity.value);
  if (quantity.unit === 'in') return asInches(quantity);
  return asMetric(quantity);
}

/** The only reading of a number without a unit; undefined where it has several or none. */
function bareReading(quantity: QuantityText): UnitReading | undefined {
  const { value, decimals, whole } = quantity;
  if (decimals === undefined && slippedPoint(whole)?.plausible) return undefined;
  if (value < 0 || value >= GAUGE_RANGE_THOU.least) return asThou(value);
  const inches = asInches(quantity);
  if (value < 1 && (decimals ?? '').length >= DECIMALS_OF_INCHES && inches.plausible) return inches;
  return undefined;
}

/** All that a number without a unit may stand for. */
function possibleReadings(quantity: QuantityText): UnitReading[] {
  const { value, whole, decimals } = quantity;
  if (decimals === undefined) {
    const slipped = slippedPoint(whole);
    return slipped ? [asThou(value), slipped] : [asThou(value)];
  }
  const millimetres = asMetric({ ...quantity, unit: 'mm' })!;
  if (value >= 1 || decimals.length >= DECIMALS_OF_INCHES) return [asInches(quantity), millimetres];
  // `.46` for a 46, `.1` for a 10: the point set as if the gauge had two figures.
  return [asInches(quantity), asThou(clean(value * 100)), millimetres];
}

/** `0105` may be a 105, or `.0105` with its point lost. Figures up to three read the same either way. */
const slippedPoint = (whole: string): UnitReading | undefined =>
  whole.startsWith('0') && whole.length > DECIMALS_OF_INCHES
    ? asThou(clean(Number(`.${whole}`) * 1000))
    : undefined;

const asThou = (thou: number): UnitReading => readingOf(thou, String(thou));

const asInches = ({ value, decimals }: QuantityText): UnitReading =>
  readingOf(
    clean(value * 1000),
    `${value.toFixed(Math.max(DECIMALS_OF_INCHES, (decimals ?? '').length))} in`,
  );

function asMetric({ value, decimals, unit }: QuantityText): UnitReading | undefined {
  const powerOfTen = METRIC_POWERS.get(unit);
  if (powerOfTen === undefined) return undefined;
  const millimetres = value * 10 ** powerOfTen;
  const figures = (decimals ?? '').length;
  return readingOf(thouOf(millimetres, figures - powerOfTen), `${value.toFixed(figures)} ${unit}`);
}

/** Millimetres in one of each, as a power of ten. */
const METRIC_POWERS: ReadonlyMap<string, number> = new Map([
  ['µm', -3],
  ['mm', 0],
  ['cm', 1],
  ['m', 3],
]);

/** Thou of a diameter written in millimetres to so many decimals: the half thou that was meant, or the exact figure. */
function thouOf(millimetres: number, decimals: number): number {
  const exact = millimetres / MILLIMETRES_PER_THOU;
  const halfThou = Math.round(exact * 2) / 2;
  const gapMillimetres = Math.abs(halfThou - exact) * MILLIMETRES_PER_THOU;
  return decimals >= 2 && gapMillimetres <= 0.5 * 10 ** -decimals + 1e-9 ? halfThou : clean(exact);
}

const readingOf = (thou: number, write: string): UnitReading => ({
  value: thou,
  unit: 'thou',
  write,
  plausible: thou >= GAUGE_RANGE_THOU.least && thou <= GAUGE_RANGE_THOU.most,
});

/** Gauges are compared for equality: takes off the last bits that a conversion leaves. */
const clean = (thou: number): number => Math.round(thou * 1e6) / 1e6;
