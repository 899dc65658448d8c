import { Link } from '@tanstack/react-router';
import { counted, weight } from '../../../contract/index.js';
import type { Day, WirePull } from '../../../core/day/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';

/** Wire to carry to the machines this day, from which spool, by weight. */
export function WirePart({ day }: { readonly day: Day }) {
  const short = day.wirePulls.filter(({ shortKg }) => shortKg > 0).length;
  return (
    <section aria-labelledby="wire">
      <h2 id="wire">Wire to pull</h2>
      <p className={short > 0 ? 'care' : 'quiet'}>
        {counted(day.wirePulls.length, 'wire')} for the runs of this day;{' '}
        {short > 0 ? `${short} short` : 'enough of each on the spools'}.
      </p>
      <SheetTable
        caption="Wire to pull"
        columns={COLUMNS}
        rows={day.wirePulls}
        rowKey={({ wireId }) => wireId}
      />
    </section>
  );
}

const COLUMNS: readonly SheetColumn<WirePull>[] = [
  { heading: 'Wire', names: true, cell: ({ wireId }) => wireId },
  { heading: 'Take', figures: true, cell: ({ neededKg }) => weight(neededKg) },
  { heading: 'That is', figures: true, cell: ({ neededM }) => `${Math.ceil(neededM)} m` },
  { heading: 'From', wide: true, cell: (pull) => <Spools pull={pull} /> },
  {
    heading: 'Short',
    figures: true,
    cell: ({ shortKg }) => (shortKg > 0 ? <span className="care">{weight(shortKg)} short</span> : '—'),
  },
  { heading: 'For lots', wide: true, cell: (pull) => <Lots pull={pull} /> },
];

function Spools({ pull }: { readonly pull: WirePull }) {
  if (pull.spools.length === 0) return 'no spool has any';
  return pull.spools.map((spool) => (
    <div key={spool.spoolId}>
      {spool.spoolId}, lot {spool.lot}: {weight(spool.takeKg)}{' '}
      <span className="quiet">{spool.leavesKg > 0 ? `leaves ${weight(spool.leavesKg)}` : 'empties it'}</span>
    </div>
  ));
}

function Lots({ pull }: { readonly pull: WirePull }) {
  return pull.runs.map((lotId, at) => (
    <span key={lotId}>
      {at > 0 && ', '}
      <Link to="/runs/$lotId" params={{ lotId }} preload={false}>
        {lotId}
      </Link>
    </span>
  ));
}
