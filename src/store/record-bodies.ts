import { Compile } from 'typebox/compile';
import { BODIES, type RecordKind } from '../contract/index.js';
import { invariant } from '../core/foundation/index.js';

type Checks = ReturnType<typeof checkOf>;

/** Refuses a body that is not of its kind's form. What people type was checked long before; this finds our own faults. */
export function bodyCheck(): (kind: RecordKind, body: unknown) => void {
  const checks = new Map<RecordKind, Checks>();
  return (kind, body) => {
    const check = checks.get(kind) ?? checkOf(kind);
    checks.set(kind, check);
    if (check.Check(body)) return;
    const wrong = check.Errors(body).map(({ instancePath, message }) => `${instancePath || '/'} ${message}`);
    throw new TypeError(`not a body of a ${kind}: ${wrong.join('; ')}`);
  };
}

const checkOf = (kind: RecordKind) => Compile(BODIES[kind]);

/** A key of a body as its column takes it; a key that the body leaves out is null. */
export function keyValue(body: unknown, field: string): string | number | null {
  const value = (body as Readonly<Record<string, unknown>>)[field] ?? null;
  invariant(
    value === null || typeof value === 'string' || Number.isFinite(value),
    `the key ${field} is neither text nor a number`,
  );
  return value as string | number | null;
}
