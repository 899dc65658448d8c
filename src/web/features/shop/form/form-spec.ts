import type { FieldWords } from '../../../parts/fields-apart.js';
import { type AmountRule, readAmount } from '../../../parts/read-amount.js';

export interface Option {
  readonly value: string;
  readonly label: string;
  /** What is kept for it, where that is not its value. */
  readonly means?: string;
}

/** What stands in a field of a form, and how it becomes a value of the record. */
export type FieldKind =
  | { readonly type: 'text'; readonly optional?: boolean }
  | { readonly type: 'amount'; readonly rule: AmountRule; readonly optional?: boolean }
  | {
      readonly type: 'choice';
      readonly options: readonly Option[];
      readonly numeric?: boolean;
      readonly optional?: boolean;
    }
  | { readonly type: 'flag' }
  | { readonly type: 'several'; readonly options: readonly Option[] }
  | {
      /** Several values written as one text; `read` gives undefined for a text that says none. */
      readonly type: 'list';
      readonly read: (text: string) => unknown;
      readonly write: (value: never) => string;
      readonly optional?: boolean;
    };

export interface FieldSpec {
  /** Where in the body: `changeMinutes.base`. */
  readonly path: string;
  readonly label: string;
  readonly hint?: string;
  readonly kind: FieldKind;
  /** Fields of one name are filled in all or none. */
  readonly together?: string;
  /** The heading that it stands under. */
  readonly group: string;
}

/** A form while somebody fills it in: every field as text, by its path. */
export type FormDraft = Readonly<Record<string, string>>;

/** A record's body as its form shows it. */
export const formOf = (body: object, specs: readonly FieldSpec[]): FormDraft =>
  Object.fromEntries(specs.map(({ path, kind }) => [path, textOf(valueAt(body, path), kind)]));

export interface ReadForm<Body> {
  /** Undefined while a field cannot be read. */
  readonly body: Body | undefined;
  /** Paths of the fields that cannot be read. */
  readonly faults: readonly string[];
}

/** The body that a form says. What no field shows is kept as it was. */
export function readForm<Body extends object>(
  before: Body,
  draft: FormDraft,
  specs: readonly FieldSpec[],
): ReadForm<Body> {
  const faults: string[] = [];
  let body: object = before;
  const isBlank = (path: string) => (draft[path] ?? '').trim() === '';
  const begun = new Set(specs.filter(({ path }) => !isBlank(path)).map(({ together }) => together));
  for (const { path, kind, together } of specs) {
    const text = draft[path] ?? '';
    const isWanted = together !== undefined && begun.has(together);
    const isLeftOut = 'optional' in kind && kind.optional && isBlank(path) && !isWanted;
    const value = isLeftOut ? undefined : readValue(text, kind);
    if (value === undefined && !isLeftOut) faults.push(path);
    else body = withValue(body, path.split('.'), value);
  }
  return { body: faults.length === 0 ? (body as Body) : undefined, faults };
}

/** The fields of a form in words, for laying two versions of a record side by side. */
export const formInWords = (draft: FormDraft, specs: readonly FieldSpec[]): readonly FieldWords[] =>
  specs.map(({ path, label, kind, group }) => ({
    name: `${group}: ${label}`,
    value: inWords(draft[path] ?? '', kind) || '—',
  }));

function textOf(value: unknown, kind: FieldKind): string {
  if (value === undefined || value === null) return '';
  switch (kind.type) {
    case 'amount':
      return String(Number(((value as number) / kind.rule.units[kind.rule.bare]!).toPrecision(9)));
    case 'choice':
      return kind.options.find((option) => keptFor(option) === String(value))?.value ?? String(value);
    case 'flag':
      return value ? YES : '';
    case 'several':
      return (value as readonly unknown[]).join(' ');
    case 'list':
      return kind.write(value as never);
    default:
      return String(value);
  }
}

function readValue(text: string, kind: FieldKind): unknown {
  switch (kind.type) {
    case 'amount': {
      const read = readAmount(text, kind.rule);
      return read.ok ? read.value : undefined;
    }
    case 'choice':
      return readChoice(
        kind.options.find(({ value }) => value === text),
        kind.numeric,
      );
    case 'flag':
      return text === YES;
    case 'several':
      return text.trim() === ''
        ? undefined
        : text
            .trim()
            .split(' ')
            .map(Number)
            .toSorted((a, b) => a - b);
    case 'list':
      return kind.read(text);
    default:
      return text.trim() === '' ? undefined : text.trim();
  }
}

const keptFor = ({ value, means }: Option): string => means ?? value;

function readChoice(option: Option | undefined, isNumeric = false): unknown {
  if (!option) return undefined;
  return isNumeric ? Number(keptFor(option)) : keptFor(option);
}

function inWords(text: string, kind: FieldKind): string {
  if (kind.type === 'choice') return kind.options.find(({ value }) => value === text)?.label ?? text;
  if (kind.type !== 'several') return text;
  const chosen = text.split(' ');
  return kind.options
    .filter(({ value }) => chosen.includes(value))
    .map(({ label }) => label)
    .join(', ');
}

/** What stands for yes in the text of a flag. */
export const YES = 'yes';

const valueAt = (body: object, path: string): unknown =>
  path.split('.').reduce<unknown>((part, key) => (part as Record<string, unknown> | undefined)?.[key], body);

/** A body with one value changed; undefined takes the field out, and a part of the body that holds nothing any more with it. */
function withValue(body: object, [key = '', ...rest]: readonly string[], value: unknown): object {
  const { [key]: before, ...others } = body as Record<string, unknown>;
  const next = rest.length === 0 ? value : withValue((before as object) ?? {}, rest, value);
  const isNothing = next === undefined || (rest.length > 0 && Object.keys(next as object).length === 0);
  return isNothing ? others : { ...(body as object), [key]: next };
}
