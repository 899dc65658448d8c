import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import type { Shop } from '../../../core/day/index.js';
import type { Result } from '../../../core/foundation/index.js';
import { type OrderFault, requestAnswerer } from '../../../core/orders/index.js';
import { answerForm, type FormAnswer } from './answer-form.js';
import type { RequestForm } from './request-form.js';

interface AskedForm {
  readonly form: RequestForm;
  readonly change: (change: Partial<RequestForm>) => void;
  readonly answer: Result<FormAnswer, readonly OrderFault[]>;
}

/** The form and its answer, worked out here in the browser as the form changes. */
export function useFormAnswer(
  shop: Shop,
  first: RequestForm,
  /** What is settled elsewhere, over what the form says. */
  settledElsewhere: Partial<RequestForm> = NOTHING,
): AskedForm {
  const [form, setForm] = useState(first);
  const answerer = useMemo(() => requestAnswerer(shop), [shop]);
  const settled = useDeferredValue(form);
  const overlaid = useOverlaid(settled, settledElsewhere);
  const answer = useMemo(() => answerForm(overlaid, shop, answerer), [overlaid, shop, answerer]);
  const change = useCallback(
    (change: Partial<RequestForm>) => setForm((before) => ({ ...before, ...change })),
    [],
  );
  return { form, change, answer };
}

const NOTHING: Partial<RequestForm> = {};

/** The same form as long as what is laid over it says the same. */
function useOverlaid(form: RequestForm, over: Partial<RequestForm>): RequestForm {
  const said = JSON.stringify(over);
  return useMemo(() => ({ ...form, ...(JSON.parse(said) as Partial<RequestForm>) }), [form, said]);
}
