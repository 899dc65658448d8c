import type { Shop } from '../../../core/day/index.js';
import type { FieldFaults } from './form-faults.js';
import type { RequestForm } from './request-form.js';

/** What every group of fields is given. */
export interface FieldsProps {
  readonly shop: Shop;
  readonly form: RequestForm;
  readonly faults: FieldFaults;
  readonly change: (change: Partial<RequestForm>) => void;
}

/** For a group that shows these fields of the form: while a slider of another group moves, it need not be drawn again. */
export const alikeIn =
  <Props extends Omit<FieldsProps, 'shop'> & Partial<FieldsProps>>(
    ...fields: readonly (keyof RequestForm)[]
  ) =>
  (before: Props, now: Props): boolean =>
    before.shop === now.shop &&
    before.faults === now.faults &&
    before.change === now.change &&
    fields.every((field) => before.form[field] === now.form[field]);
