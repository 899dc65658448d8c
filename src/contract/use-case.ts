import type { Static, TSchema } from 'typebox';
import type { Permission } from './permissions.js';

/** What can be asked of the shop: one thing a person does, done whole or not at all. */
export interface UseCaseDefinition<
  Input extends TSchema = TSchema,
  Output extends TSchema = TSchema,
  Name extends string = string,
> {
  /** Verb first, kebab-case: `receive-spool`. */
  readonly name: Name;
  /** A line for people, as the API page shows it. */
  readonly summary: string;
  readonly permission: Permission;
  /** Below `/api/v1`, always POST: `/spools/receive`. */
  readonly path: string;
  readonly input: Input;
  readonly output: Output;
}

export type InputOf<Definition extends UseCaseDefinition> = Static<Definition['input']>;
export type OutputOf<Definition extends UseCaseDefinition> = Static<Definition['output']>;

/** A definition with its name and its schemas' types kept, so that a client can be inferred from it. */
export const defineUseCase = <Input extends TSchema, Output extends TSchema, const Name extends string>(
  definition: UseCaseDefinition<Input, Output, Name>,
): UseCaseDefinition<Input, Output, Name> => definition;
