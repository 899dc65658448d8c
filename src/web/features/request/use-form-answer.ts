import { useDeferredValue, useMemo, useState } from 'react';
import type { Shop } from '../../../core/day/index.js';
import type { Result } from '../../../core/foundation/index.js';
import { type OrderFault, requestAnswerer } from '../../../core/orders/index.js';
import { answerForm, type FormAnswer } from './answer-form.js';
import { FIRST_FORM, type RequestForm } from './request-form.js';

interface AskedForm {
  readonly form: RequestForm;
  readonly change: (change: Partial<RequestForm>) => void;
  readonly answer: Result<FormAnswer, readonly OrderFault[]>;
}

/** The form and its answer, worked out here in the browser as the form changes. */
export function useFormAnswer(shop: Shop): AskedForm {
  const [form, setForm] = useState(FIRST_FORM);
  const answerer = useMemo(() => requestAnswerer(shop), [shop]);
  const settled = useDeferredValue(form);
  const answer = useMemo(() => answerForm(settled, shop, answerer), [settled, shop, answerer]);
  return { form, change: (change) => setForm((before) => ({ ...before, ...change })), answer };
}
