import { Link } from '@tanstack/react-router';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';

type PackRecord = RecordOf<'pack'>;

const TONES: Readonly<Record<string, StateTone>> = {
  open: 'goes',
  sealed: 'done',
  shipped: 'done',
  void: 'stopped',
};

/** The sets of an order that are or were in a bag. */
export function OrderPacks({ orderId }: { readonly orderId: string }) {
  const words = useWords(ORDERS_WORDS);
  const packs = useAllRecords('pack', { orderId });
  const { packColumns } = words;
  const columns: readonly SheetColumn<PackRecord>[] = [
    {
      heading: packColumns.label,
      names: true,
      cell: ({ id, body }) => (
        <Link to="/packing" search={{ pack: id }} preload={false}>
          {body.labelCode}
        </Link>
      ),
    },
    { heading: packColumns.set, wide: true, cell: ({ body }) => body.setName },
    {
      heading: packColumns.picked,
      cell: ({ body }) => words.pickedOf(body.picked.length, body.wanted.length),
    },
    {
      heading: packColumns.state,
      cell: ({ state }) => (
        <StateMark tone={TONES[state] ?? 'waits'}>{words.packStates[state] ?? state}</StateMark>
      ),
    },
  ];
  return (
    <section aria-labelledby="packs" className={desk.stack}>
      <h2 id="packs">{words.packs}</h2>
      {packs.data?.length ? (
        <SheetTable caption={words.packs} columns={columns} rows={packs.data} rowKey={({ id }) => id} />
      ) : (
        <p className="quiet">{packs.error?.message ?? words.noPacks}</p>
      )}
    </section>
  );
}
