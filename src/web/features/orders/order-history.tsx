import { useChangedBy } from '../../api/use-changed-by.js';
import { useVersions } from '../../api/use-records.js';
import desk from '../../parts/desk.module.css';
import { fieldsApart } from '../../parts/fields-apart.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { orderFields } from './order-fields.js';
import { orderForm } from './order-form.js';
import { OrderState } from './order-state.js';
import type { OrderRecord } from './use-listed-orders.js';

interface Step {
  readonly version: OrderRecord;
  /** What it says otherwise than the version before: names of fields. */
  readonly changed: string;
}

/** Every version of an order, the latest first, with who wrote it for those who may know. */
export function OrderHistory({ record }: { readonly record: OrderRecord }) {
  const words = useWords(ORDERS_WORDS);
  const { moment, date } = useFigures();
  const versions = useVersions('order', record.id);
  const changedBy = useChangedBy(record.id);
  const steps = (versions.data ?? []).map((version, at, all): Step => {
    const before = all[at - 1];
    const fieldsOf = (one: OrderRecord) => orderFields(orderForm(one), words, date);
    const apart = before
      ? fieldsApart(fieldsOf(before), fieldsOf(version)).filter(({ differs }) => differs)
      : [];
    const names = apart.map(({ name, here, there }) => `${name}: ${here} → ${there}`).join('; ');
    return { version, changed: before ? names || words.stateOnly : words.entered };
  });
  const { historyColumns } = words;
  const columns: readonly SheetColumn<Step>[] = [
    {
      heading: historyColumns.when,
      names: true,
      cell: ({ version }) => moment(version.updatedAt),
    },
    { heading: historyColumns.who, cell: ({ version }) => changedBy(version.version).who },
    { heading: historyColumns.state, cell: ({ version }) => <OrderState state={version.state} /> },
    { heading: historyColumns.changed, wide: true, cell: ({ changed }) => changed },
  ];
  return (
    <section aria-labelledby="history" className={desk.stack}>
      <h2 id="history">{words.history}</h2>
      <SheetTable
        caption={words.history}
        columns={columns}
        rows={steps.toReversed()}
        rowKey={({ version }) => version.version}
      />
    </section>
  );
}
