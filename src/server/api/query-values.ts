import type { TSchema } from 'typebox';

/**
 * The values of a query, read by its schema: numbers and yes-or-no from their exact writing, all else text as it stands. What
 * cannot be read stays as it came, so that the check tells of it.
 */
export function queryValues(schema: TSchema, query: unknown): unknown {
  if (typeof query !== 'object' || query === null) return query;
  const { properties = {} } = schema as { readonly properties?: Readonly<Record<string, TSchema>> };
  return Object.fromEntries(
    Object.entries(query).map(([name, value]) => [name, readValue(properties[name], value)]),
  );
}

function readValue(schema: TSchema | undefined, value: unknown): unknown {
  if (typeof value !== 'string') return value;
  const { type } = (schema ?? {}) as { readonly type?: string };
  if (type === 'integer' || type === 'number') return NUMBER.test(value) ? Number(value) : value;
  if (type === 'boolean') return value === 'true' || (value === 'false' ? false : value);
  return value;
}

const NUMBER = /^-?\d+(\.\d+)?$/;
