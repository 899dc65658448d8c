import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { type LyingStrings, wholeStringInWords } from '../../../contract/index.js';
import { stepsFrom } from '../../../core/foundation/index.js';
import { STRING_LOT_LIFE } from '../../../core/stock/index.js';
import { useMay } from '../../api/session.js';
import { useAllRecords, useRecord } from '../../api/use-records.js';
import { useShopView } from '../../api/use-shop.js';
import { Asked } from '../../parts/asked.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type Fact, Facts } from '../../parts/facts.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { MovementsPart } from '../movements/movements-part.js';
import { AskedStrings } from './asked-strings.js';
import { JudgeDialog, type Judgement } from './judge-dialog.js';
import { LotPlaces } from './lot-places.js';
import type { LotRecord } from './lot-record.js';
import { LotState } from './lot-state.js';
import type { BinRecord } from './strings-book.js';

/** One lot of strings, by the id of its record. */
export function LotPart({ id }: { readonly id: string }) {
  const words = useWords(STRINGS_WORDS);
  const lot = useRecord('string-lot', id);
  return (
    <Asked question={lot} what={words.oneLot}>
      {(record) => (
        <AskedStrings>
          {(bins, lying) => (
            <LotRoom lot={record} bins={bins} lying={lying.filter(({ lotId }) => lotId === id)} />
          )}
        </AskedStrings>
      )}
    </Asked>
  );
}

interface LotRoomProps {
  readonly lot: LotRecord;
  readonly bins: readonly BinRecord[];
  readonly lying: readonly LyingStrings[];
}

function LotRoom({ lot, bins, lying }: LotRoomProps) {
  const words = useWords(STRINGS_WORDS);
  const may = useMay();
  const people = useShopView().data?.people ?? {};
  const [judging, setJudging] = useState<Judgement>();
  const { name, holdReason, releasedBy } = lot.body;
  const judgements = stepsFrom(STRING_LOT_LIFE, lot.state).filter((step) =>
    may(step === 'hold' ? 'lot.hold' : 'lot.release'),
  );
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={name} />
          <p className={desk.about}>
            <LotState state={lot.state} />
            <span className="quiet">{wholeStringInWords(lot.body.stringKey)}</span>
          </p>
          {holdReason && <p className="care">{words.heldBecause(holdReason)}</p>}
          {releasedBy && <p className="quiet">{words.releasedBy(people[releasedBy] ?? words.notKnown)}</p>}
        </div>
        <Link to="/strings" search={{}}>
          {words.all}
        </Link>
      </div>
      <Facts facts={useLotFacts(lot, lying)} />
      {judgements.length > 0 && (
        <div className={desk.row}>
          {judgements.map((step) => (
            <Button
              key={step}
              kind={step === 'release' ? 'main' : step === 'scrap' ? 'grave' : 'plain'}
              onClick={() => setJudging(step)}
            >
              {words.judge[step]}
            </Button>
          ))}
        </div>
      )}
      <LotPlaces lot={lot} bins={bins} lying={lying} />
      <MovementsPart item={`string/${lot.body.stringKey}`} lot={lot.id} />
      {judging && (
        <JudgeDialog key={judging} lot={lot} judgement={judging} onClose={() => setJudging(undefined)} />
      )}
    </div>
  );
}

function useLotFacts(lot: LotRecord, lying: readonly LyingStrings[]): readonly Fact[] {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const may = useMay();
  const spools = useAllRecords('spool').data ?? [];
  const { runId, made, spoolIds } = lot.body;
  const { facts } = words;
  const left = lying.reduce((sum, { count }) => sum + count, 0);
  return [
    { name: facts.made, value: figures.number(made) },
    {
      name: facts.left,
      value: (
        <Explained name={words.leftName} what={words.leftWhat} source={words.leftSource}>
          {figures.number(left)}
        </Explained>
      ),
    },
    {
      name: facts.run,
      value:
        runId === undefined ? (
          words.noRun
        ) : may('run.read') ? (
          <Link to="/runs/$id" params={{ id: runId }}>
            {words.aRun}
          </Link>
        ) : (
          words.none
        ),
    },
    { name: facts.entered, value: figures.date(lot.createdAt.slice(0, 10)) },
    {
      name: facts.spools,
      value:
        spoolIds.length === 0
          ? words.notKnown
          : spoolIds.map((id, at) => (
              <span key={id}>
                {at > 0 && ', '}
                <Link to="/wire" search={{ spool: id }}>
                  {spools.find((spool) => spool.id === id)?.body.name ?? '…'}
                </Link>
              </span>
            )),
    },
  ];
}
