import { readMaterial } from '../core/orders/index.js';
import type { StringMaterial } from '../core/recipes/index.js';
import { GAUGE_RANGE_THOU, parseGauge } from '../core/units/index.js';
import { Refusal } from './inputs.js';

/** A gauge typed as an option, thousandths of an inch, or a refusal that says both readings where there are two. */
export function gaugeOption(name: string, text: string): number {
  const read = parseGauge(text);
  if (read.ok) return read.value;
  const readings = read.fault.readings.map(({ write }) => write);
  switch (read.fault.code) {
    case 'unit.ambiguous':
      throw new Refusal(
        `${name} "${text}" can be read as ${readings.join(' or ')}. Write the one that is meant.`,
      );
    case 'unit.out-of-range':
      throw new Refusal(
        `${name} "${text}" is no gauge that a string could have. Gauges run from ${GAUGE_RANGE_THOU.least} to ${GAUGE_RANGE_THOU.most} thousandths of an inch.`,
      );
    case 'unit.unreadable':
      throw new Refusal(
        `${name} "${text}" is no gauge. Write thousandths of an inch, such as 26, or .026, or 0.66 mm.`,
      );
  }
}

export function materialOption(name: string, text: string): StringMaterial {
  const read = readMaterial(text);
  if (read.ok) return read.value;
  throw new Refusal(
    `${name} "${text}" is no material that is known. Nearest: ${read.fault.nearest.join(', ') || 'nickel-plated steel, phosphor bronze'}.`,
  );
}

export function numberOption(
  name: string,
  text: string,
  range: { readonly least: number; readonly most: number },
): number {
  const value = Number(text);
  if (text.trim() !== '' && value >= range.least && value <= range.most) return value;
  throw new Refusal(`${name} "${text}" is no number from ${range.least} to ${range.most}.`);
}

export function wholeOption(
  name: string,
  text: string,
  range: { readonly least: number; readonly most: number },
): number {
  const value = numberOption(name, text, range);
  if (Number.isInteger(value)) return value;
  throw new Refusal(`${name} "${text}" is no whole number.`);
}
