/** An outcome where failing is normal: either a value, or a fault that says why there is none. */
export type Result<T, F> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: F };

export const succeed = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const fail = <F>(fault: F): { readonly ok: false; readonly fault: F } => ({ ok: false, fault });

/** Throws when a promise between rooms is broken: a fault of the program, never of its user. */
export function invariant(condition: unknown, broken: string): asserts condition {
  if (!condition) throw new Error(`Broken promise inside Tautwork: ${broken}`);
}
