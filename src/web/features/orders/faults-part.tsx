import { orderFaultWords } from '../../../contract/index.js';
import type { OrderFault } from '../../../core/orders/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';

/** The lines of the file that could not go on, and how to mend each. */
export function FaultsPart({ faults }: { readonly faults: readonly OrderFault[] }) {
  return (
    <section aria-labelledby="faults">
      <h2 id="faults">Lines to mend</h2>
      {faults.length === 0 ? (
        <p className="quiet">None: every line of the file went on.</p>
      ) : (
        <SheetTable
          caption="Lines to mend"
          columns={COLUMNS}
          rows={faults}
          rowKey={(fault) => JSON.stringify(fault)}
        />
      )}
    </section>
  );
}

const COLUMNS: readonly SheetColumn<OrderFault>[] = [
  { heading: 'Line', names: true, cell: ({ line }) => line },
  { heading: 'Order', whole: true, cell: ({ orderId }) => orderId },
  { heading: 'Column', cell: ({ column }) => column },
  { heading: 'What is wrong', wide: true, cell: (fault) => orderFaultWords(fault).what },
  { heading: 'What to do', wide: true, cell: (fault) => orderFaultWords(fault).mend },
];
