import type { MachineWearView } from '../../../contract/index.js';
import { useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { Picture } from '../../parts/picture.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WEAR_WORDS, type WearVerdictWord } from '../../words/wear.js';
import { WearPicture } from './wear-picture.js';

type Wear = MachineWearView['machines'][number];

interface WearPartProps {
  readonly machineId: string;
  readonly machineName: string;
  readonly isGear: boolean;
}

/** Whether a machine drifts: the verdict, what it rests on, and its months. */
export function WearPart({ machineId, machineName, isGear }: WearPartProps) {
  const words = useWords(WEAR_WORDS);
  const view = useReading('machine-wear', {});
  return (
    <section className={desk.part} aria-labelledby="wear">
      <h2 id="wear">{words.title}</h2>
      <p className={desk.lead}>{words.lead}</p>
      <Asked question={view} what={words.what}>
        {(seen) => {
          const wear = seen.machines.find((each) => each.machineId === machineId);
          return wear ? (
            <Judged view={seen} wear={wear} machineName={machineName} isGear={isGear} />
          ) : (
            <p>{words.verdicts['too-little']}</p>
          );
        }}
      </Asked>
    </section>
  );
}

const TONES: Readonly<Record<WearVerdictWord, StateTone>> = {
  'too-little': 'waits',
  steady: 'done',
  unclear: 'goes',
  drifts: 'care',
  replace: 'stopped',
};

interface JudgedProps {
  readonly view: MachineWearView;
  readonly wear: Wear;
  readonly machineName: string;
  readonly isGear: boolean;
}

function Judged({ view, wear, machineName, isGear }: JudgedProps) {
  const words = useWords(WEAR_WORDS);
  const figures = useFigures();
  const { verdict, points, since } = wear;
  const said = verdict === 'replace' && !isGear ? words.replaceServo : words.verdicts[verdict];
  const instruments = view.instruments.map(({ instrument, byM, from }) =>
    words.instrument(instrument, figures.slight(Math.abs(byM)), byM > 0, figures.date(from)),
  );
  return (
    <>
      <p>
        <StateMark tone={TONES[verdict]}>{words.marks[verdict]}</StateMark> <strong>{said}</strong>
      </p>
      <Evidence view={view} wear={wear} />
      {since && <p className="quiet">{words.since(figures.date(since))}</p>}
      {instruments.length > 0 && <p className="quiet">{words.instruments(instruments)}</p>}
      {points.length > 1 && (
        <Picture
          title={words.months}
          picture={<WearPicture machineName={machineName} wear={wear} toleranceM={view.toleranceM} />}
          table={<MonthsTable caption={words.months} points={points} />}
          caption={<p className="quiet small">{words.method}</p>}
        />
      )}
    </>
  );
}

/** A rate a day is too small to read: it is told by the hundred days. */
const HUNDRED = 100;

function Evidence({
  view,
  wear: { drift, points },
}: {
  readonly view: MachineWearView;
  readonly wear: Wear;
}) {
  const words = useWords(WEAR_WORDS);
  const figures = useFigures();
  if (!drift) return null;
  const { perDayM, daysLeft, soFarM, days, z } = drift;
  const rate = (value: number) => figures.slight(HUNDRED * value);
  if (!daysLeft) return <p>{words.noTrend(rate(perDayM.from), rate(perDayM.to))}</p>;
  const ends = [Math.abs(perDayM.from), Math.abs(perDayM.to)].sort((a, b) => a - b);
  const runs = points.reduce((sum, point) => sum + point.runs, 0);
  return (
    <p>
      {words.evidence({
        perHundredDays: rate(Math.abs(perDayM.value)),
        from: rate(ends[0]!),
        to: rate(ends[1]!),
        soFar: figures.slight(Math.abs(soFarM)),
        days: figures.number(days),
        isThicker: soFarM > 0,
      })}{' '}
      <Explained
        name={words.rateName}
        what={words.rateWhat}
        formula={words.rateFormula}
        inputs={[
          { name: words.inputs.months, value: figures.number(points.length) },
          { name: words.inputs.runs, value: figures.number(runs) },
          { name: words.inputs.z, value: figures.number(z, 2) },
        ]}
        source={words.rateSource(figures.number(runs))}
      >
        {words.left({
          tolerance: figures.slight(view.toleranceM),
          days: Math.round(daysLeft.value),
          earliest: Math.round(daysLeft.earliest),
          latest: daysLeft.latest === undefined ? undefined : Math.round(daysLeft.latest),
        })}
      </Explained>
    </p>
  );
}

function MonthsTable({ caption, points }: { readonly caption: string; readonly points: Wear['points'] }) {
  const words = useWords(WEAR_WORDS);
  const figures = useFigures();
  return (
    <SheetTable
      caption={caption}
      columns={[
        { heading: words.columns.month, names: true, cell: ({ date }) => figures.date(date) },
        { heading: words.columns.off, figures: true, cell: ({ offM }) => figures.slight(offM) },
        { heading: words.columns.u, figures: true, cell: ({ u }) => `± ${figures.slight(1.6449 * u)}` },
        { heading: words.columns.runs, figures: true, cell: ({ runs }) => figures.number(runs) },
      ]}
      rows={points}
      rowKey={({ date }) => date}
    />
  );
}
