import Type, { type TSchema } from 'typebox';

/** What stands in the journal where a secret was given. */
export const LEFT_OUT = '(left out)';

/** A text that must never be kept or told again: a password, a PIN, the secret of a link or token. JSON Schema's own mark
 * for that is `writeOnly`; journal, repeats and logs leave such fields out. */
export const secretText = (
  description: string,
  limits: { readonly minLength?: number; readonly maxLength?: number; readonly pattern?: string } = {},
) => Type.String({ minLength: 1, maxLength: 400, ...limits, description, format: 'password' });

/** Whether a schema has a secret anywhere. */
export function hasSecrets(schema: TSchema): boolean {
  const { properties = {}, items, anyOf = [] } = schema as Parts;
  const parts = [...Object.values(properties), ...(items ? [items] : []), ...anyOf];
  return isSecret(schema) || parts.some(hasSecrets);
}

/** A value of a schema with `LEFT_OUT` in place of every secret, however deep it lies. */
export function withoutSecrets(schema: TSchema, value: unknown): unknown {
  if (isSecret(schema)) return LEFT_OUT;
  const { properties, items, anyOf } = schema as Parts;
  if (anyOf) return anyOf.reduce((bare: unknown, part) => withoutSecrets(part, bare), value);
  if (Array.isArray(value)) return items ? value.map((item) => withoutSecrets(items, item)) : value;
  if (!properties || typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, field]) => {
      const part = properties[name];
      return [name, part ? withoutSecrets(part, field) : field];
    }),
  );
}

interface Parts {
  readonly properties?: Readonly<Record<string, TSchema>>;
  readonly items?: TSchema;
  readonly anyOf?: readonly TSchema[];
  readonly format?: string;
}

const isSecret = (schema: TSchema): boolean => (schema as Parts).format === 'password';
