import { type Result, succeed } from '../foundation/index.js';
import type { Recipe } from '../recipes/index.js';
import type { Machine } from './machine.js';
import { type StringJob, stringWork } from './string-work.js';
import type { UnableReason } from './unable.js';

/**
 * Whether a machine can make a recipe at a length over all, with every reason where it cannot. It asks the
 * same questions as `setUp`, so a run planned on an able machine always gets its sheet.
 */
export function machineAble(
  machine: Machine,
  recipe: Recipe,
  lengthM: number,
  options: Pick<StringJob, 'seat' | 'practice' | 'record' | 'end'> = {},
): Result<true, readonly UnableReason[]> {
  const work = stringWork({ ...options, machine, recipe, lengthM });
  return work.ok ? succeed(true) : work;
}
