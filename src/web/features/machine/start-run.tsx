import { useState } from 'react';
import { listInWords, type ShopView } from '../../../contract/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { ScanBox } from '../../parts/scan-box.js';
import { useSound } from '../../parts/sound.js';
import { StateMark } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { SPOOL_WORDS } from '../../words/machine.js';
import { CautionsHere } from './cautions-here.js';
import { findSpool, mountable, type SpoolFound } from './find-spool.js';
import { SpoolChoices, SpoolLines } from './spool-choices.js';
import { SpoolVerdict } from './spool-verdict.js';
import type { CautionsOfRun } from './use-cautions.js';
import type { RunBook } from './use-run-book.js';
import { type WireOfRun, wireNamesOf, wiresOfRun } from './wire-names.js';

interface StartRunProps {
  readonly book: RunBook;
  readonly view: ShopView;
  readonly cautions: CautionsOfRun | undefined;
  readonly onStarted: () => void;
}

/** The wire goes on, spool by spool, each looked at before the run may start. */
export function StartRun({ book: { run }, view, cautions, onStarted }: StartRunProps) {
  const words = useWords(SPOOL_WORDS);
  const sound = useSound();
  const start = useQueued('start-run');
  const spools = useAllRecords('spool').data ?? [];
  const [chosen, setChosen] = useState<readonly string[]>(start.editing?.input.spoolIds ?? []);
  const [scanned, setScanned] = useState<{ readonly text: string; readonly found: SpoolFound }>();
  const wires = wiresOfRun(run.body.recipeId, view);
  const wireIds = wires.map(({ wireId }) => wireId);
  const wireOf = wireNamesOf(view);
  const on = chosen.flatMap((id) => spools.find((spool) => spool.id === id) ?? []);
  const lacking = wireIds.filter((wireId) => !on.some(({ body }) => body.wireId === wireId));
  const { machineId, name } = run.body;
  const take = (text: string) => {
    const found = findSpool(text, { spools, wireIds, machineId, onIt: chosen });
    setScanned({ text, found });
    if (found.kind !== 'right') return sound.refused();
    sound.accepted();
    setChosen([...chosen, found.spool.id]);
  };
  const areRead = cautions === undefined || cautions.toRead?.length === 0;
  const begin = async () => {
    const input = { runId: run.id, expectedVersion: run.version, spoolIds: [...chosen] };
    await start.enter(input, { label: words.started(name), place: `/machine?run=${run.id}` });
    sound.accepted();
    onStarted();
  };
  return (
    <section aria-label={words.mountTitle} className={styles.part}>
      {cautions && <CautionsHere cautions={cautions} />}
      <h2>{words.mountTitle}</h2>
      <p className={styles.caution}>{words.handsCaution}</p>
      <ScanBox label={words.scan} hint={words.scanHint} onScan={take} />
      {scanned && <SpoolVerdict {...scanned} wireIds={wireIds} view={view} />}
      <ul className={styles.wires} aria-label={words.needs}>
        {wires.map((wire) => (
          <WireWanted
            key={wire.wireId}
            wire={wire}
            name={wireOf(wire.wireId)}
            on={on.filter(({ body }) => body.wireId === wire.wireId)}
            onOff={(id) => setChosen(chosen.filter((each) => each !== id))}
          />
        ))}
      </ul>
      <div className={styles.onward}>
        {!areRead && <p>{words.startUnread}</p>}
        {lacking.length > 0 && <p>{words.startLacks(listInWords(lacking.map(wireOf)))}</p>}
        <Button
          kind="main"
          size="floor"
          disabled={lacking.length > 0 || wires.length === 0 || !areRead}
          onClick={() => void begin()}
        >
          {words.start}
        </Button>
      </div>
      {lacking.map((wireId) => (
        <SpoolChoices
          key={wireId}
          title={words.choose(wireOf(wireId))}
          none={words.none(wireOf(wireId))}
          spools={mountable(spools, { wireId, machineId })}
          onChoose={({ body }) => take(body.name)}
        />
      ))}
    </section>
  );
}

interface WireWantedProps {
  readonly wire: WireOfRun;
  readonly name: string;
  readonly on: readonly RecordOf<'spool'>[];
  readonly onOff: (spoolId: string) => void;
}

function WireWanted({ wire, name, on, onOff }: WireWantedProps) {
  const words = useWords(SPOOL_WORDS);
  return (
    <li className={styles.wire}>
      <span className={styles.lines}>
        <span className="quiet">{words[wire.use]}</span>
        <strong className={styles.gauge}>{name}</strong>
      </span>
      {on.length === 0 && <StateMark tone="waits">{words.missing}</StateMark>}
      {on.map((spool) => (
        <span key={spool.id} className={styles.mounted}>
          <StateMark tone="done">{words.on}</StateMark>
          <SpoolLines spool={spool} />
          <Button onClick={() => onOff(spool.id)}>{words.takeOff}</Button>
        </span>
      ))}
    </li>
  );
}
