import type { ReadingAnswer } from '../../../contract/index.js';
import { useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SET_UPS_WORDS } from '../../words/set-ups.js';

type Learned = ReadingAnswer<'set-ups-learned'>;
type Kind = Learned['kinds'][number];
type Cause = Learned['scrap'][number];

interface SetUpsPartProps {
  readonly machineId: string;
  readonly machineName: string;
}

/** What setting a machine up takes by the shop's own runs, kind of change by kind of change; and what was scrapped, by cause. */
export function SetUpsPart({ machineId, machineName }: SetUpsPartProps) {
  const words = useWords(SET_UPS_WORDS);
  const learned = useReading('set-ups-learned', {});
  return (
    <section className={desk.part} aria-labelledby="set-ups">
      <h2 id="set-ups">{words.title}</h2>
      <p className={desk.lead}>{words.lead}</p>
      <Asked question={learned} what={words.what}>
        {({ kinds, scrap }) => {
          const own = kinds.filter((kind) => kind.machineId === machineId);
          const causes = scrap.filter((cause) => cause.machineId === machineId);
          if (own.length === 0) return <p className="quiet">{words.none}</p>;
          return (
            <>
              <KindsTable kinds={own} machineName={machineName} />
              {causes.length > 0 && <CausesTable causes={causes} />}
            </>
          );
        }}
      </Asked>
    </section>
  );
}

function KindsTable({
  kinds,
  machineName,
}: {
  readonly kinds: readonly Kind[];
  readonly machineName: string;
}) {
  const words = useWords(SET_UPS_WORDS);
  const { columns } = words;
  return (
    <SheetTable
      caption={words.title}
      columns={[
        { heading: columns.kind, names: true, cell: ({ kind }) => words.kinds[kind] },
        { heading: columns.setUps, figures: true, cell: ({ setUps }) => setUps },
        {
          heading: columns.scrap,
          figures: true,
          cell: (row) => <Figure row={row} of="scrap" machineName={machineName} />,
        },
        {
          heading: columns.minutes,
          figures: true,
          cell: (row) => <Figure row={row} of="minutes" machineName={machineName} />,
        },
        {
          heading: columns.used,
          cell: ({ isUsed }) => (
            <StateMark tone={isUsed ? 'done' : 'waits'}>{isUsed ? words.used : words.notUsed}</StateMark>
          ),
        },
      ]}
      rows={kinds}
      rowKey={({ kind }) => kind}
    />
  );
}

interface FigureProps {
  readonly row: Kind;
  readonly of: 'scrap' | 'minutes';
  readonly machineName: string;
}

function Figure({ row, of, machineName }: FigureProps) {
  const words = useWords(SET_UPS_WORDS);
  const figures = useFigures();
  const figure = row[of];
  if (!figure) return words.notTold;
  const kind = words.kinds[row.kind];
  const number = (value: number) => figures.number(value, of === 'scrap' ? 1 : 0);
  return (
    <Explained
      name={of === 'scrap' ? words.scrapName(kind) : words.minutesName(kind)}
      what={of === 'scrap' ? words.scrapWhat : words.minutesWhat}
      formula={of === 'scrap' ? words.scrapFormula : words.minutesFormula}
      inputs={[
        { name: words.inputs.record, value: number(figure.figure) },
        { name: words.inputs.setUps, value: figures.number(figure.setUps) },
        { name: words.inputs.from, value: number(figure.low) },
        { name: words.inputs.to, value: number(figure.high) },
      ]}
      source={words.source(figures.number(figure.setUps), kind, machineName)}
    >
      {number(figure.learned)}
    </Explained>
  );
}

function CausesTable({ causes }: { readonly causes: readonly Cause[] }) {
  const words = useWords(SET_UPS_WORDS);
  const figures = useFigures();
  const { causeColumns: columns } = words;
  return (
    <>
      <h3>{words.causes}</h3>
      <p className={desk.lead}>{words.causesLead}</p>
      <SheetTable
        caption={words.causes}
        columns={[
          { heading: columns.reason, names: true, cell: ({ reason }) => reason },
          { heading: columns.kind, cell: ({ kind }) => words.kinds[kind] },
          { heading: columns.inSetUp, figures: true, cell: ({ inSetUp }) => figures.number(inSetUp) },
          {
            heading: columns.after,
            figures: true,
            cell: ({ strings, inSetUp }) => figures.number(strings - inSetUp),
          },
        ]}
        rows={causes.toSorted((one, other) => other.strings - one.strings)}
        rowKey={({ kind, reason }) => `${kind} ${reason}`}
      />
    </>
  );
}
