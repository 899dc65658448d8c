import { orderFaultWords, workshopFaultWords } from '../../../contract/index.js';
import type { OrderFault } from '../../../core/orders/index.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import type { Preview } from './mapping.js';

type Fault = Preview['faults'][number];

interface MendPartProps {
  readonly faults: Preview['faults'];
  readonly goToLine: (line: number) => void;
}

/** What cannot be taken, line by line: what is wrong, how to mend it, and the way to the line. */
export function MendPart({ faults, goToLine }: MendPartProps) {
  const words = useWords(ORDERS_WORDS);
  const { faultColumns } = words;
  if (faults.length === 0) return null;
  const columns: readonly SheetColumn<Fault>[] = [
    {
      heading: faultColumns.line,
      names: true,
      cell: ({ line }) => (
        <Button kind="bare" onClick={() => goToLine(line)}>
          {words.goToLine(line)}
        </Button>
      ),
    },
    { heading: faultColumns.order, whole: true, cell: ({ orderId }) => orderId },
    { heading: faultColumns.column, cell: ({ column }) => column },
    { heading: faultColumns.read, cell: ({ read }) => read },
    { heading: faultColumns.what, wide: true, cell: (fault) => faultWords(fault).what },
    { heading: faultColumns.mend, wide: true, cell: (fault) => faultWords(fault).mend },
  ];
  return (
    <section aria-labelledby="mend" className={desk.stack}>
      <h2 id="mend">{words.toMend}</h2>
      <SheetTable
        caption={words.toMend}
        columns={columns}
        rows={faults}
        rowKey={(fault) => JSON.stringify(fault)}
        middle
      />
    </section>
  );
}

/** Faults of the lines themselves are the core's; those of orders against what is kept are the shop's. */
const faultWords = (fault: Fault) =>
  fault.code.startsWith('order.') ? orderFaultWords(fault as OrderFault) : workshopFaultWords(fault);
