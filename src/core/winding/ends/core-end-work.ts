import { fail, type Result, succeed } from '../../foundation/index.js';
import type { Recipe } from '../../recipes/index.js';
import type { StringSpec } from '../../sets/index.js';
import { stringBody } from '../../string/index.js';
import type { CuttingBench } from '../machine.js';
import { STARTING_PRACTICE, type WindingPractice } from '../practice.js';
import { endReasons, type UnableReason } from '../unable.js';
import type { EndPull } from './end-pull.js';
import { type EndSheet, endSheet } from './end-sheet.js';

interface CoreEndTask {
  readonly bench: CuttingBench;
  readonly recipe: Recipe;
  readonly spec: StringSpec;
  readonly quantity: number;
  readonly pulls?: readonly EndPull[];
  readonly practice?: WindingPractice;
}

/**
 * The sheet by which a bench ends the cores of a wound string's run, or the strings of a plain one; or every reason
 * why it cannot. A core's gauge is not asked for: the bench never sees the wrap.
 */
export function coreEndSheet(task: CoreEndTask): Result<EndSheet, readonly UnableReason[]> {
  const { bench, recipe, spec, practice = STARTING_PRACTICE } = task;
  const body = stringBody(recipe.construction);
  if (!body.ok) return fail([{ code: 'winding.construction-unsound', fault: body.fault }]);
  const tooLong: readonly UnableReason[] =
    spec.lengthM > bench.longestStringM
      ? [{ code: 'winding.string-too-long', lengthM: spec.lengthM, mostM: bench.longestStringM }]
      : [];
  const reasons = [...tooLong, ...endReasons(bench, recipe, { ...spec, practice })];
  if (reasons.length > 0) return fail(reasons);
  return succeed(endSheet({ ...task, body: body.value, practice }));
}
