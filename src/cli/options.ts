import { readMaterial } from '../core/orders/index.js';
import type { StringMaterial } from '../core/recipes/index.js';
import { type GaugeWithKind, parseGaugeWithKind } from '../core/units/index.js';
import { Refusal } from './inputs.js';

/** A gauge typed as an option, or a refusal that says both readings where there are two. */
export function gaugeOption(name: string, text: string): GaugeWithKind {
  const read = parseGaugeWithKind(text);
  if (read.ok) return read.value;
  const readings = read.fault.readings.map(({ write }) => write);
  throw new Refusal(
    read.fault.code === 'unit.ambiguous'
      ? `${name} "${text}" can be read as ${readings.join(' or ')}. Write the one that is meant.`
      : `${name} "${text}" is no gauge. Write thousandths of an inch, such as 26, or .026, or 0.66 mm.`,
  );
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
