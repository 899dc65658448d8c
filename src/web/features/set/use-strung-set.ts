import { useDeferredValue, useMemo, useState } from 'react';
import type { Shop } from '../../../core/day/index.js';
import { fail, type Result } from '../../../core/foundation/index.js';
import type { StringSpec, TargetWish } from '../../../core/sets/index.js';
import { type FieldFaults, faultsByField } from '../request/form-faults.js';
import { readRequestLine } from '../request/read-request-line.js';
import { type Home, homeOf } from './at-home.js';
import { type StrungSet, strungSet, type UnmadeString } from './strung-set.js';

/** What the pulls are held against. */
export type Held = 'even' | 'graded' | 'home';

export interface StringingForm extends Home {
  readonly held: Held;
}

type Strung = Result<StrungSet, FieldFaults | UnmadeString>;

interface StrungAsAsked {
  readonly form: StringingForm;
  readonly change: (change: Partial<StringingForm>) => void;
  readonly strung: Strung;
}

/** A set on the instrument and in the tuning that the page's fields say. */
export function useStrungSet(specs: readonly StringSpec[], shop: Shop): StrungAsAsked {
  const home = useMemo(() => homeOf(specs, shop), [specs, shop]);
  const [form, setForm] = useState<StringingForm>({ ...home, held: 'even' });
  const settled = useDeferredValue(form);
  const strung = useMemo(() => strungAs(settled, home, specs, shop), [settled, home, specs, shop]);
  return { form, change: (change) => setForm((before) => ({ ...before, ...change })), strung };
}

function strungAs(form: StringingForm, home: Home, specs: readonly StringSpec[], shop: Shop): Strung {
  const read = readRequestLine({ ...form, ...NOT_ASKED }, shop);
  if (!read.ok) return fail(faultsByField(read.fault));
  const { instrument, tuning } = read.value;
  if (tuning.pitches.length !== specs.length) return fail(countFault(specs.length, tuning.pitches.length));
  const atHome = readRequestLine({ ...home, ...NOT_ASKED }, shop);
  return strungSet(
    {
      specs,
      instrument,
      tuning,
      wish: WISHES[form.held],
      homeTuning: atHome.ok ? atHome.value.tuning : tuning,
    },
    shop,
  );
}

/** The page asks where a set is strung, not for a new one: material and aim play no part. */
const NOT_ASKED = { material: 'nickel-plated steel', wishes: 'even' };

const WISHES: Readonly<Record<Held, TargetWish>> = {
  even: { target: 'even' },
  graded: { target: 'graded', gradePerString: 0.03 },
  home: { target: 'feel' },
};

const countFault = (strings: number, given: number): FieldFaults => ({
  tuning: {
    what: `The set has ${strings} strings, and the tuning ${given} notes.`,
    mend: 'Give one note for every string.',
  },
});
