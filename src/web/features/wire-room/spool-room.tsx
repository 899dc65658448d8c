import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useMay } from '../../api/session.js';
import { useShopView } from '../../api/use-shop.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { type Fact, Facts } from '../../parts/facts.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import { PullsPart } from '../ends/pulls-part.js';
import { MovementsPart } from '../movements/movements-part.js';
import { FinishDialog } from './finish-dialog.js';
import { HoldDialog } from './hold-dialog.js';
import { SpoolState } from './spool-state.js';
import { WeighDialog } from './weigh-dialog.js';
import type { SpoolLine, WireLine } from './wire-book.js';
import { LengthFigure } from './wire-figures.js';

interface SpoolRoomProps {
  readonly line: WireLine;
  readonly spoolId: string;
}

/** One spool: what is on it, where it came from, what was done with it, and what may be done. */
export function SpoolRoom({ line, spoolId }: SpoolRoomProps) {
  const words = useWords(WIRE_WORDS);
  const may = useMay();
  const [doing, setDoing] = useState<'weigh' | 'finish' | 'hold'>();
  const found = [...line.spools, ...line.emptied].find(({ spool }) => spool.id === spoolId)!;
  const { spool } = found;
  const close = () => setDoing(undefined);
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={spool.body.name} />
          <p className={desk.about}>
            <SpoolState state={spool.state} />
            <Link to="/wire" search={{ wire: line.wire.id }}>
              {line.wire.body.name}
            </Link>
          </p>
          {spool.body.holdReason && <p className="care">{words.heldBecause(spool.body.holdReason)}</p>}
        </div>
        <Link to="/wire" search={{}}>
          {words.all}
        </Link>
      </div>
      <Facts facts={useSpoolFacts(found, line)} />
      {may('wire.weigh') && spool.state !== 'empty' && (
        <div className={desk.row}>
          <Button kind="main" onClick={() => setDoing('weigh')}>
            {words.weigh}
          </Button>
          <Button onClick={() => setDoing('hold')}>
            {spool.state === 'quarantined' ? words.free : words.quarantine}
          </Button>
          {spool.state !== 'quarantined' && (
            <Button onClick={() => setDoing('finish')}>{words.finish}</Button>
          )}
        </div>
      )}
      {line.wire.body.use !== 'wrap' && <PullsPart query={{ spoolId: spool.id }} />}
      <MovementsPart account={`spool/${spool.id}`} />
      {doing === 'weigh' && <WeighDialog line={found} wire={line.wire} onClose={close} />}
      {doing === 'finish' && <FinishDialog line={found} onClose={close} />}
      {doing === 'hold' && <HoldDialog spool={spool} onClose={close} />}
    </div>
  );
}

function useSpoolFacts({ spool, kg, metres }: SpoolLine, { wire }: WireLine): readonly Fact[] {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const machines = useShopView().data?.ids.machines ?? {};
  const { facts } = words;
  const { lot, receivedAt, tareKg, weighed, certificate, machineId } = spool.body;
  const machine = Object.entries(machines).find(([, id]) => id === machineId)?.[0];
  return [
    {
      name: facts.onHand,
      value: figures.weight(kg),
      ...(machine ? { under: words.onMachine(machine) } : {}),
    },
    {
      name: facts.length,
      value: <LengthFigure wire={wire} what={spool.body.name} kg={kg} metres={metres} />,
    },
    { name: facts.lot, value: lot },
    { name: facts.received, value: figures.date(receivedAt.slice(0, 10)) },
    {
      name: facts.weighed,
      value: weighed ? figures.weight(weighed.grossKg) : words.never,
      ...(weighed ? { under: figures.moment(weighed.at) } : {}),
    },
    { name: facts.tare, value: figures.weight(tareKg) },
    {
      name: facts.certificate,
      value: words.certificateIn(
        certificate?.number ?? '',
        certificate?.diameterM === undefined ? '' : figures.diameter(certificate.diameterM),
        certificate?.tensilePa === undefined ? '' : figures.stress(certificate.tensilePa),
      ),
    },
  ];
}
