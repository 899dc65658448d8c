import { readFileSync } from 'node:fs';
import type { Result } from '../../../src/core/foundation/index.js';

/** Rows of a file of the collection by the names in its heading; comments left out. */
export function qualityRows(file: string): readonly Readonly<Record<string, string>>[] {
  const text = readFileSync(new URL(`quality/${file}`, import.meta.url), 'utf8');
  const [heading = '', ...lines] = text.split(/\r?\n/).filter((line) => line !== '' && !line.startsWith('#'));
  const names = heading.split(',');
  return lines.map((line) => Object.fromEntries(line.split(',').map((cell, index) => [names[index]!, cell])));
}

/** How far a figure is from another, as a share of it. */
export const relativeError = (found: number, expected: number): number =>
  expected === 0 ? Math.abs(found) : Math.abs(found / expected - 1);

/** The value, where a fault would be a fault of the test. */
export function given<T>(result: Result<T, unknown>): T {
  if (!result.ok) throw new Error(`no value: ${JSON.stringify(result.fault)}`);
  return result.value;
}
