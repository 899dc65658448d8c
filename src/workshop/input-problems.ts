import type { TSchema } from 'typebox';
import { Compile, type Validator } from 'typebox/compile';
import { type ShapeError, shapeErrors } from './shape-errors.js';

/** Everything wrong with a value by its schema, each with its place; empty where nothing is. */
export function inputProblems(schema: TSchema, value: unknown): readonly ShapeError[] {
  const validator = compiled(schema);
  return validator.Check(value) ? [] : shapeErrors(validator.Errors(value));
}

const validators = new WeakMap<TSchema, Validator>();

/** Compiling takes longer than checking: once for each schema. */
function compiled(schema: TSchema): Validator {
  const known = validators.get(schema);
  if (known) return known;
  const validator = Compile(schema) as unknown as Validator;
  validators.set(schema, validator);
  return validator;
}
