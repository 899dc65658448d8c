/** A field of a record in words. */
export interface FieldWords {
  readonly name: string;
  readonly value: string;
}

/** A field as it stands in two versions of a record. */
export interface FieldApart {
  readonly name: string;
  readonly here: string;
  readonly there: string;
  readonly differs: boolean;
}

/** Two versions laid side by side by the names of their fields; a field that one of them lacks shows as a dash there. */
export function fieldsApart(
  here: readonly FieldWords[],
  there: readonly FieldWords[],
): readonly FieldApart[] {
  const ofThere = new Map(there.map(({ name, value }) => [name, value]));
  const ofHere = new Map(here.map(({ name, value }) => [name, value]));
  const names = [...new Set([...ofHere.keys(), ...ofThere.keys()])];
  return names.map((name) => {
    const left = ofHere.get(name) ?? NOTHING;
    const right = ofThere.get(name) ?? NOTHING;
    return { name, here: left, there: right, differs: left !== right };
  });
}

const NOTHING = '—';
