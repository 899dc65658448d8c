import type { TSchema } from 'typebox';

/** A value that a schema takes, small and plain: what the page of the API shows. Fields that may be left out are. */
export function exampleOf(schema: TSchema, name = 'id'): unknown {
  const { anyOf, allOf, enum: words, type, properties, required = [], items, ...limits } = schema as Parts;
  if ('const' in limits) return limits.const;
  if (limits.default !== undefined) return limits.default;
  if (words) return words[0];
  if (anyOf) return exampleOf(anyOf[0]!, name);
  if (allOf) return Object.assign({}, ...allOf.map((part) => exampleOf(part, name)));
  if (type === 'object') {
    return Object.fromEntries(required.map((field) => [field, exampleOf(properties![field]!, field)]));
  }
  if (type === 'array') {
    return Array.from({ length: limits.minItems ?? 1 }, () => exampleOf(items!, name));
  }
  if (type === 'string') return textFor(limits, name);
  if (type === 'integer' || type === 'number') return numberFor(limits, type === 'integer');
  if (type === 'boolean') return false;
  return null;
}

interface Parts extends Limits {
  readonly anyOf?: readonly TSchema[];
  readonly allOf?: readonly TSchema[];
  readonly enum?: readonly unknown[];
  readonly type?: string;
  readonly properties?: Readonly<Record<string, TSchema>>;
  readonly required?: readonly string[];
  readonly items?: TSchema;
}

interface Limits {
  readonly const?: unknown;
  readonly default?: unknown;
  readonly format?: string;
  readonly pattern?: string;
  readonly minLength?: number;
  readonly minItems?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
}

/** Texts of every form that the schemas ask for; the test tries each example against its schema. */
const TEXTS: readonly string[] = ['2031-03-04T08:30:00.000Z', '2031-03-04', '4711', 'XTS'];

function textFor({ format, pattern, minLength = 0 }: Limits, name: string): string {
  if (format === 'uuid') return uuidFor(name);
  if (pattern !== undefined) return TEXTS.find((text) => new RegExp(pattern, 'u').test(text)) ?? '';
  return name.padEnd(minLength, '.');
}

/** The same name gets the same id, so that an example hangs together. */
function uuidFor(name: string): string {
  const digits = [...name].map((letter) => (letter.codePointAt(0)! % 256).toString(16).padStart(2, '0'));
  return `01980000-0000-7000-8000-${digits.join('').slice(0, 12).padEnd(12, '0')}`;
}

function numberFor({ minimum, maximum, exclusiveMinimum }: Limits, isWhole: boolean): number {
  const least = minimum ?? (exclusiveMinimum === undefined ? 1 : exclusiveMinimum + (isWhole ? 1 : 0.5));
  return maximum !== undefined && least > maximum ? maximum : Math.max(least, Math.min(1, maximum ?? 1));
}
