/** What is wrong at one place of a JSON file. */
export interface ShapeError {
  /** Where it stands, `/wires/0/sizeM`. */
  readonly path: string;
  /** The rest of a sentence that begins with the place: `must be number`. */
  readonly message: string;
}

/** An error as the validator words it. */
export interface ValidatorError {
  readonly keyword: string;
  readonly schemaPath: string;
  readonly instancePath: string;
  readonly params: object;
  readonly message: string;
}

/**
 * A validator's errors for a person who mends the file: of the forms that a thing may have (a servo machine,
 * a gear machine, a bench) only the one that it comes nearest to is spoken of, and each place once.
 */
export function shapeErrors(errors: readonly ValidatorError[]): readonly ShapeError[] {
  const byPath = new Map<string, Set<string>>();
  for (const error of nearestForms(errors)) {
    const message = messageOf(error);
    if (message === undefined) continue;
    const path = error.instancePath || '/';
    byPath.set(path, (byPath.get(path) ?? new Set()).add(message));
  }
  return [...byPath].map(([path, messages]) => ({ path, message: [...messages].join(' or ') }));
}

/** Errors of a union's forms, but for those of the form with the fewest. */
function nearestForms(errors: readonly ValidatorError[]): readonly ValidatorError[] {
  const counts = new Map<string, number[]>();
  for (const error of errors) {
    const form = formOf(error);
    if (!form) continue;
    const ofThing = counts.get(form.thing) ?? [];
    ofThing[form.number] = (ofThing[form.number] ?? 0) + 1;
    counts.set(form.thing, ofThing);
  }
  return errors.filter((error) => {
    const form = formOf(error);
    if (!form) return true;
    const ofThing = counts.get(form.thing)!;
    const fewest = Math.min(...Object.values(ofThing));
    return ofThing.indexOf(fewest) === form.number;
  });
}

/** The outermost union that an error is inside of: the thing in the file that has a form, and the form's number. */
function formOf({ schemaPath, instancePath }: ValidatorError) {
  const match = /^(.*?)\/anyOf\/(\d+)(?:\/|$)/.exec(schemaPath);
  if (!match) return undefined;
  // `/properties/machines/items` of the schema is `/machines/0` of the file: as many steps as names and items.
  const steps = match[1]!.match(/properties\/[^/]+|items/g)?.length ?? 0;
  const thing = instancePath
    .split('/')
    .slice(0, steps + 1)
    .join('/');
  return { thing, number: Number(match[2]) };
}

function messageOf({ keyword, params, message }: ValidatorError): string | undefined {
  switch (keyword) {
    case 'boolean':
      return 'is not known here';
    case 'additionalProperties':
    case 'anyOf':
      return undefined;
    case 'const':
      return `must be ${JSON.stringify((params as { allowedValue?: unknown }).allowedValue)}`;
    case 'enum':
      return `must be one of ${(params as { allowedValues?: readonly unknown[] }).allowedValues?.join(', ')}`;
    case 'required':
      return `lacks ${(params as { requiredProperties?: readonly string[] }).requiredProperties?.join(', ')}`;
    default:
      return message;
  }
}
