import { Link } from '@tanstack/react-router';
import { type ReactNode, useId } from 'react';
import type { QualityView } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';
import type { QualitySearch } from './asked-of.js';
import { nameIn } from './names.js';
import styles from './quality.module.css';

type Findings = QualityView['findings'];

/** What the numbers say now, a sentence each, with what it rests on and where to look. */
export function FindingsPart({ view }: { readonly view: QualityView }) {
  const words = useWords(QUALITY_WORDS).findings;
  const figures = useFigures();
  const id = useId();
  const { findings } = view;
  const until = { from: findings.from, until: view.until };
  const count = findings.machines.length + findings.instruments.length + findings.lots.length;
  return (
    <section aria-labelledby={id} className={desk.part}>
      <h2 id={id}>{words.title}</h2>
      {count === 0 && <p>{words.none(figures.date(findings.from))}</p>}
      <ol className={styles.findings}>
        {findings.machines.map((machine) => (
          <MachineFinding key={machine.machineId} machine={machine} view={view} period={until} />
        ))}
        {findings.lots.map((lot) => (
          <LotFinding key={`${lot.lot} ${lot.by}`} lot={lot} view={view} period={until} />
        ))}
        {findings.instruments.map((shift) => (
          <InstrumentFinding key={`${shift.instrument} ${shift.since}`} shift={shift} period={until} />
        ))}
      </ol>
      <p className="quiet small">{words.method(figures.date(findings.from), figures.date(view.until))}</p>
    </section>
  );
}

type Period = Pick<QualitySearch, 'from' | 'until'>;

interface FindingProps {
  readonly said: string;
  readonly evidence: string;
  readonly toDo: string;
  readonly look: QualitySearch;
  readonly lookAt: string;
  readonly children?: ReactNode;
}

function Finding({ said, evidence, toDo, look, lookAt, children }: FindingProps) {
  const words = useWords(QUALITY_WORDS).findings;
  return (
    <li>
      <p className={styles.said}>{said}</p>
      <p>{evidence}</p>
      <p className="quiet">{toDo}</p>
      <p className={desk.row}>
        <Link to="/quality" search={look} resetScroll={false} hash="chart">
          {words.look(lookAt)}
        </Link>
        {children}
      </p>
    </li>
  );
}

interface MachineProps {
  readonly machine: Findings['machines'][number];
  readonly view: QualityView;
  readonly period: Period;
}

function MachineFinding({ machine, view, period }: MachineProps) {
  const words = useWords(QUALITY_WORDS).findings;
  const figures = useFigures();
  const { machineId, perDayM, since, soFarM, runs, verdict, daysLeft } = machine;
  const name = nameIn(view.choices.machines, machineId);
  const isThicker = perDayM.value > 0;
  const inHundred = (valueM: number) => figures.slight(Math.abs(valueM) * 100);
  const [least, most] = [inHundred(perDayM.from), inHundred(perDayM.to)];
  return (
    <Finding
      said={words.machine(name, isThicker, figures.date(since))}
      evidence={words.machineBy({
        rate: inHundred(perDayM.value),
        from: isThicker ? least : most,
        to: isThicker ? most : least,
        soFar: figures.slight(Math.abs(soFarM)),
        runs,
      })}
      toDo={words.machineToDo(verdict, daysLeft === undefined ? undefined : Math.round(daysLeft))}
      look={{ ...period, machine: machineId, measure: 'first', by: 'machine' }}
      lookAt={name}
    />
  );
}

interface LotProps {
  readonly lot: Findings['lots'][number];
  readonly view: QualityView;
  readonly period: Period;
}

function LotFinding({ lot, view, period }: LotProps) {
  const words = useWords(QUALITY_WORDS).findings;
  const figures = useFigures();
  const name = nameIn(view.choices.lots, lot.lot);
  const [wireId = ''] = lot.lot.split('/');
  const times = (value: number) => figures.number(value, 1);
  const percent = (value: number) => `${figures.number(Math.abs(value) * 100, 1)} %`;
  const isHeavier = lot.value > 0;
  const { runs, lotsLookedAt } = lot;
  const rests = { runs, lots: lotsLookedAt };
  return (
    <Finding
      said={lot.by === 'along' ? words.lotAlong(name) : words.lotWeight(name, isHeavier)}
      evidence={
        lot.by === 'along'
          ? words.lotAlongBy({ ...rests, value: times(lot.value), from: times(lot.from), to: times(lot.to) })
          : words.lotWeightBy({
              ...rests,
              value: percent(lot.value),
              from: percent(isHeavier ? lot.from : lot.to),
              to: percent(isHeavier ? lot.to : lot.from),
              isHeavier,
            })
      }
      toDo={words.lotToDo}
      look={{ ...period, lot: lot.lot, measure: lot.by, by: 'lot' }}
      lookAt={name}
    >
      <Link to="/wire" search={{ wire: wireId }}>
        {words.toSpools}
      </Link>
    </Finding>
  );
}

interface InstrumentProps {
  readonly shift: Findings['instruments'][number];
  readonly period: Period;
}

function InstrumentFinding({ shift, period }: InstrumentProps) {
  const words = useWords(QUALITY_WORDS).findings;
  const figures = useFigures();
  const { instrument, byM, fromM, toM, since, runsBefore, runsSince } = shift;
  const size = (valueM: number) => figures.slight(Math.abs(valueM));
  const isLarger = byM > 0;
  return (
    <Finding
      said={words.instrument(instrument, isLarger, figures.date(since))}
      evidence={words.instrumentBy({
        by: size(byM),
        from: size(isLarger ? fromM : toM),
        to: size(isLarger ? toM : fromM),
        runsBefore,
        runsSince,
      })}
      toDo={words.instrumentToDo}
      look={{ ...period, instrument, measure: 'first', by: 'instrument' }}
      lookAt={instrument}
    />
  );
}
