import { orderFaultWords } from '../../../contract/index.js';
import type { OrderFault } from '../../../core/orders/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';

/** Orders that could not go on, and how to mend each. */
export function FaultsPart({ faults }: { readonly faults: readonly OrderFault[] }) {
  const { linesToMend, noneToMend, faultColumns } = useWords(ORDERS_WORDS);
  const columns: readonly SheetColumn<OrderFault>[] = [
    { heading: faultColumns.order, names: true, cell: ({ orderId }) => orderId },
    { heading: faultColumns.what, wide: true, cell: (fault) => orderFaultWords(fault).what },
    { heading: faultColumns.mend, wide: true, cell: (fault) => orderFaultWords(fault).mend },
  ];
  return (
    <section aria-labelledby="faults">
      <h2 id="faults">{linesToMend}</h2>
      {faults.length === 0 ? (
        <p className="quiet">{noneToMend}</p>
      ) : (
        <SheetTable
          caption={linesToMend}
          columns={columns}
          rows={faults}
          rowKey={(fault) => JSON.stringify(fault)}
        />
      )}
    </section>
  );
}
