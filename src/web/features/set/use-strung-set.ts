import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import type { Shop } from '../../../core/day/index.js';
import { fail, type Result } from '../../../core/foundation/index.js';
import type { StringSpec, TargetWish } from '../../../core/sets/index.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { SETS_WORDS } from '../../words/sets.js';
import { type FieldFaults, faultsByField } from '../request/form-faults.js';
import { readRequestLine } from '../request/read-request-line.js';
import { type Home, homeOf } from './at-home.js';
import { type StrungSet, strungSet, type UnmadeString } from './strung-set.js';

/** What the pulls are held against. */
export type Held = 'even' | 'graded' | 'home';

export interface StringingForm extends Home {
  readonly held: Held;
}

export type Strung = Result<StrungSet, FieldFaults | UnmadeString>;

interface StrungAsAsked {
  readonly form: StringingForm;
  readonly change: (change: Partial<StringingForm>) => void;
  readonly strung: Strung;
  /** Other strings in the same place. */
  readonly likewise: (specs: readonly StringSpec[]) => Strung;
}

/** A set on the instrument and in the tuning that the page's fields say. */
export function useStrungSet(specs: readonly StringSpec[], shop: Shop): StrungAsAsked {
  const requests = useWords(REQUESTS_WORDS);
  const { strung: words } = useWords(SETS_WORDS);
  const home = useMemo(() => homeOf(specs, shop), [specs, shop]);
  const [form, setForm] = useState<StringingForm>({ ...home, held: 'even' });
  const settled = useDeferredValue(form);
  const likewise = useCallback(
    (these: readonly StringSpec[]): Strung => {
      const read = readRequestLine({ ...placeOf(settled), ...NOT_ASKED }, shop);
      if (!read.ok) return fail(faultsByField(read.fault, requests));
      const { instrument, tuning } = read.value;
      if (tuning.pitches.length !== these.length)
        return fail({
          tuning: {
            what: words.countFault(these.length, tuning.pitches.length),
            mend: words.countMend,
          },
        });
      const atHome = readRequestLine({ ...home, ...NOT_ASKED }, shop);
      const homeTuning = atHome.ok ? atHome.value.tuning : tuning;
      return strungSet({ specs: these, instrument, tuning, wish: WISHES[settled.held], homeTuning }, shop);
    },
    [settled, home, shop, requests, words],
  );
  const strung = useMemo(() => likewise(specs), [likewise, specs]);
  return { form, change: (change) => setForm((before) => ({ ...before, ...change })), strung, likewise };
}

const placeOf = ({ instrument, scale, tuning }: StringingForm): Home => ({ instrument, scale, tuning });

/** The page asks where a set is strung, not for a new one: material and aim play no part. */
const NOT_ASKED = { material: 'nickel-plated steel', wishes: 'even' };

const WISHES: Readonly<Record<Held, TargetWish>> = {
  even: { target: 'even' },
  graded: { target: 'graded', gradePerString: 0.03 },
  home: { target: 'feel' },
};
