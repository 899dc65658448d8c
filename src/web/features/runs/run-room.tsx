import { Link } from '@tanstack/react-router';
import { type ReadingAnswer, wholeStringInWords } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import { useAllRecords, useReading, useRecord } from '../../api/use-records.js';
import { useShopView } from '../../api/use-shop.js';
import { buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type Fact, Facts } from '../../parts/facts.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';
import { RunEndsPart } from '../ends/run-ends-part.js';
import { ChartPart } from './chart-part.js';
import { RunJournal } from './run-journal.js';
import type { RunRecord } from './run-record.js';
import { runSamples } from './run-samples.js';
import { RunState } from './run-state.js';
import { TalliesPart } from './tallies-part.js';
import { TrialsPart } from './trials-part.js';
import { useRunWire } from './use-run-wire.js';
import { VoidedPart } from './voided-part.js';
import { WireUsedPart } from './wire-used-part.js';

/** A run from plan to close: what was wound, on what, from what, what was measured and what came of it. */
export function RunRoom({ run }: { readonly run: RunRecord }) {
  const words = useWords(RUNS_WORDS);
  const may = useMay();
  const { body } = run;
  const trials = useReading('trial-strings', { runId: run.id }).data?.items ?? [];
  const measurements = useReading('measurements', { runId: run.id, limit: 500 }).data?.items ?? [];
  const tallies = useReading('tallies', { runId: run.id, limit: 500 }).data?.items ?? [];
  const lot = useRecord('string-lot', body.lotId ?? '', { enabled: body.lotId !== undefined }).data;
  const spoolIds = [
    ...new Set([
      ...body.spoolIds,
      ...(body.takenOff ?? []).map(({ spoolId }) => spoolId),
      ...(lot?.body.spoolIds ?? []),
    ]),
  ];
  const taken = useRunWire(run.id, spoolIds);
  const samples = runSamples(measurements, trials);
  const isLive = ['planned', 'running', 'paused'].includes(run.state);
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={body.name} />
          <p className={desk.about}>
            <RunState state={run.state} />
            <span className="quiet">{wholeStringInWords(body.stringKey)}</span>
          </p>
          {body.note !== '' && <p className={desk.lead}>{body.note}</p>}
        </div>
        {isLive && may('run.work') && (
          <Link to="/machine" search={{ run: run.id }} className={buttonClass()}>
            {words.toMachine}
          </Link>
        )}
      </div>
      <Facts
        facts={useRunFacts(run, { lotName: lot?.body.name, counts: isLive ? tallied(tallies) : run.body })}
      />
      <ChartPart run={run} samples={samples} changes={taken.map(({ at }) => at)} />
      <TrialsPart trials={trials} samples={samples} />
      <RunEndsPart run={run} />
      <TalliesPart tallies={tallies} />
      <VoidedPart runId={run.id} />
      <WireUsedPart taken={taken} />
      {may('journal.read') && <RunJournal runId={run.id} />}
    </div>
  );
}

interface Counts {
  readonly goodCount: number;
  readonly scrapCount: number;
}

/** Of a run that is not closed yet the tallies are all that is known. */
function tallied(tallies: ReadingAnswer<'tallies'>['items']): Counts {
  const sum = (wanted: 'good' | 'scrap') =>
    tallies.reduce((total, { outcome, count }) => total + (outcome === wanted ? count : 0), 0);
  return { goodCount: sum('good'), scrapCount: sum('scrap') };
}

function useRunFacts(
  { body }: RunRecord,
  { lotName, counts }: { readonly lotName: string | undefined; readonly counts: Counts },
): readonly Fact[] {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const may = useMay();
  const view = useShopView().data;
  const spools = useAllRecords('spool').data ?? [];
  const { facts } = words;
  const nameOf = (ids: Readonly<Record<string, string>> | undefined, wanted: string) =>
    Object.entries(ids ?? {}).find(([, id]) => id === wanted)?.[0];
  const wound = counts.goodCount + counts.scrapCount;
  const when = (instant: string | undefined) =>
    instant === undefined ? words.notYet : figures.moment(instant);
  return [
    { name: facts.wanted, value: figures.number(body.quantity) },
    { name: facts.good, value: figures.number(counts.goodCount) },
    { name: facts.scrap, value: figures.number(counts.scrapCount) },
    {
      name: facts.yield,
      value:
        wound === 0 ? (
          words.none
        ) : (
          <Explained
            name={facts.yield}
            what={words.yieldWhat}
            formula={words.yieldFormula}
            inputs={[
              { name: facts.good, value: figures.number(counts.goodCount) },
              { name: facts.scrap, value: figures.number(counts.scrapCount) },
            ]}
            source={words.yieldSource}
          >
            {figures.share(counts.goodCount / wound)}
          </Explained>
        ),
    },
    { name: facts.machine, value: nameOf(view?.ids.machines, body.machineId) ?? words.none },
    {
      name: facts.recipe,
      value: may('recipe.read') ? (
        <Link to="/recipes/$id" params={{ id: body.recipeId }}>
          {nameOf(view?.ids.recipes, body.recipeId) ?? words.itsRecipe}
        </Link>
      ) : (
        (nameOf(view?.ids.recipes, body.recipeId) ?? words.none)
      ),
      under: words.version(body.recipeVersion),
    },
    {
      name: facts.winder,
      value: body.winderId === undefined ? words.notYet : (view?.people[body.winderId] ?? words.none),
    },
    { name: facts.started, value: when(body.startedAt) },
    { name: facts.closed, value: when(body.closedAt) },
    {
      name: facts.lot,
      value:
        body.lotId === undefined ? (
          words.notYet
        ) : (
          <Link to="/strings" search={{ lot: body.lotId }}>
            {lotName ?? words.itsLot}
          </Link>
        ),
    },
    ...(body.spoolIds.length === 0
      ? []
      : [
          {
            name: facts.mounted,
            value: body.spoolIds.map((id, at) => (
              <span key={id}>
                {at > 0 && ', '}
                <Link to="/wire" search={{ spool: id }}>
                  {spools.find((spool) => spool.id === id)?.body.name ?? '…'}
                </Link>
              </span>
            )),
          },
        ]),
  ];
}
