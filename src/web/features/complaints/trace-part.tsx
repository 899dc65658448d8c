import { Link } from '@tanstack/react-router';
import { type ComplaintTrace, wholeStringInWords } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import { useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';

type Traced = ComplaintTrace['strings'][number];

/** Pack, lots, runs, machines and wire behind a complaint, and where the records end. */
export function TracePart({ complaintId }: { readonly complaintId: string }) {
  const { trace: words } = useWords(COMPLAINTS_WORDS);
  return (
    <section aria-labelledby="trace" className={desk.part}>
      <h2 id="trace">{words.title}</h2>
      <Asked question={useReading('complaint-trace', { complaintId })} what={words.what}>
        {(trace) => <Trace trace={trace} />}
      </Asked>
    </section>
  );
}

function Trace({ trace: { pack, strings, endsAt } }: { readonly trace: ComplaintTrace }) {
  const { trace: words } = useWords(COMPLAINTS_WORDS);
  const figures = useFigures();
  const may = useMay();
  const columns: readonly SheetColumn<Traced>[] = [
    {
      heading: words.string,
      names: true,
      cell: ({ position, stringKey, isMeant }) => (
        <>
          {position !== undefined && `${position}: `}
          {wholeStringInWords(stringKey)} {isMeant && <StateMark tone="care">{words.meant}</StateMark>}
        </>
      ),
    },
    {
      heading: words.lot,
      cell: ({ lotId, lot, sameLot }) => (
        <>
          <Link to="/strings" search={{ lot: lotId }}>
            {lot}
          </Link>
          {sameLot > 0 && <p className="care small">{words.sameLot(sameLot)}</p>}
        </>
      ),
    },
    {
      heading: words.run,
      cell: ({ run }) => {
        if (!run) return <span className="quiet">{words.notKnown}</span>;
        const day = run.closedAt === undefined ? '' : figures.date(run.closedAt.slice(0, 10));
        return (
          <>
            {may('run.read') ? (
              <Link to="/runs/$id" params={{ id: run.id }}>
                {run.name}
              </Link>
            ) : (
              run.name
            )}
            <p className="quiet small">{words.made(run.machine, day)}</p>
          </>
        );
      },
    },
    {
      heading: words.wire,
      cell: ({ spools }) =>
        spools.length === 0 ? (
          <span className="quiet">{words.notKnown}</span>
        ) : (
          <ul className={desk.list}>
            {spools.map(({ id, name, wire, lot }) => (
              <li key={id}>
                <Link to="/wire" search={{ spool: id }}>
                  {words.spool(wire, name, lot)}
                </Link>
              </li>
            ))}
          </ul>
        ),
    },
  ];
  return (
    <div className={desk.stack}>
      {pack && (
        <p>
          {words.pack} {pack.labelCode}, {pack.setName},{' '}
          {pack.shippedAt === undefined ? words.notSent : words.sent(figures.moment(pack.shippedAt))}.{' '}
          <Link to="/orders/$id" params={{ id: pack.orderId }} preload={false}>
            {words.order} {pack.order}
          </Link>
        </p>
      )}
      <p className="quiet">{words.ends[endsAt]}</p>
      {strings.length > 0 && !strings.some(({ isMeant }) => isMeant) && <p>{words.noneMeant}</p>}
      {strings.length > 0 && (
        <SheetTable
          caption={words.title}
          columns={columns}
          rows={strings}
          rowKey={({ lotId, position }) => `${position} ${lotId}`}
        />
      )}
    </div>
  );
}
