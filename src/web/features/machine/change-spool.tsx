import { useState } from 'react';
import type { ShopView } from '../../../contract/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { readAmount } from '../../parts/read-amount.js';
import { ScanBox } from '../../parts/scan-box.js';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SPOOL_WORDS } from '../../words/machine.js';
import { findSpool, mountable, type SpoolFound } from './find-spool.js';
import { SpoolChoices, SpoolLines } from './spool-choices.js';
import { SpoolVerdict } from './spool-verdict.js';
import { grossRule } from './spool-weight.js';
import { useFocusOnce } from './use-focus-once.js';
import type { RunBook } from './use-run-book.js';
import { wireNamesOf } from './wire-names.js';

type Spool = RecordOf<'spool'>;

interface ChangeSpoolProps {
  readonly book: RunBook;
  readonly view: ShopView;
}

/** A full spool for one that runs out: the new one by scan, the old one by weight. */
export function ChangeSpool({ book: { run }, view }: ChangeSpoolProps) {
  const words = useWords(SPOOL_WORDS);
  const sound = useSound();
  const change = useQueued('change-spool');
  const spools = useAllRecords('spool').data ?? [];
  const [freshId, setFreshId] = useState(change.editing?.input.newSpoolId);
  const [oldId, setOldId] = useState(change.editing?.input.oldSpoolId);
  const [scanned, setScanned] = useState<{ readonly text: string; readonly found: SpoolFound }>();
  const { machineId, spoolIds } = run.body;
  const on = spoolIds.flatMap((id) => spools.find((spool) => spool.id === id) ?? []);
  const wireIds = [...new Set(on.map(({ body }) => body.wireId))];
  const wireOf = wireNamesOf(view);
  const fresh = spools.find(({ id }) => id === freshId);
  const offs = fresh ? on.filter(({ body }) => body.wireId === fresh.body.wireId) : [];
  const old = offs.length === 1 ? offs[0] : offs.find(({ id }) => id === oldId);
  const startOver = () => {
    setFreshId(undefined);
    setOldId(undefined);
    setScanned(undefined);
  };
  const take = (text: string) => {
    const found = findSpool(text, { spools, wireIds, machineId, onIt: spoolIds });
    setScanned({ text, found });
    if (found.kind !== 'right') return sound.refused();
    sound.accepted();
    setFreshId(found.spool.id);
  };
  const enter = async (oldGrossKg: number) => {
    if (!fresh || !old) return;
    const asked = { runId: run.id, expectedVersion: run.version };
    await change.enter(
      { ...asked, oldSpoolId: old.id, oldGrossKg, newSpoolId: fresh.id },
      { label: words.changed(old.body.name, fresh.body.name), place: `/machine?run=${run.id}` },
    );
    sound.accepted();
    startOver();
  };
  return (
    <section aria-label={words.changeTitle} className={styles.part}>
      <h2>{words.changeTitle}</h2>
      <p>{words.changeLead}</p>
      <p className={styles.caution}>{words.handsCaution}</p>
      <ul className={styles.wires} aria-label={words.onNow}>
        {on.map((spool) => (
          <li key={spool.id} className={styles.wire}>
            <strong className={styles.gauge}>{wireOf(spool.body.wireId)}</strong>
            <SpoolLines spool={spool} />
          </li>
        ))}
      </ul>
      {!fresh && <ScanBox label={words.scan} hint={words.scanHint} onScan={take} />}
      {scanned && <SpoolVerdict {...scanned} wireIds={wireIds} view={view} />}
      {fresh && offs.length > 1 && !old && (
        <SpoolChoices title={words.whichOff} none="" spools={offs} onChoose={({ id }) => setOldId(id)} />
      )}
      {fresh && old && (
        <OldWeight old={old} fresh={fresh} onWeight={(kg) => void enter(kg)} onStop={startOver} />
      )}
      {!fresh &&
        wireIds.map((wireId) => (
          <SpoolChoices
            key={wireId}
            title={words.choose(wireOf(wireId))}
            none={words.none(wireOf(wireId))}
            spools={mountable(spools, { wireId, machineId }).filter(({ id }) => !spoolIds.includes(id))}
            onChoose={({ body }) => take(body.name)}
          />
        ))}
    </section>
  );
}

interface OldWeightProps {
  readonly old: Spool;
  readonly fresh: Spool;
  readonly onWeight: (grossKg: number) => void;
  readonly onStop: () => void;
}

function OldWeight({ old, fresh, onWeight, onStop }: OldWeightProps) {
  const words = useWords(SPOOL_WORDS);
  const figures = useFigures();
  const field = useFocusOnce<HTMLInputElement>();
  const [text, setText] = useState('');
  const rule = grossRule(old);
  const weight = readAmount(text, rule);
  const enter = () => weight.ok && onWeight(weight.value);
  const last = old.body.weighed ? figures.weight(old.body.weighed.grossKg) : '–';
  return (
    <div className={styles.asking}>
      <p className={styles.said}>{words.newSpool(fresh.body.name)}</p>
      <p className={styles.said}>{words.comesOff(old.body.name)}</p>
      <AmountField
        large
        label={words.oldWeight}
        description={words.weightHint(last)}
        rule={rule}
        text={text}
        onText={setText}
        onEnter={enter}
        inputRef={field}
      />
      <div className={styles.doing}>
        <Button kind="main" size="floor" disabled={!weight.ok} onClick={enter}>
          {words.change}
        </Button>
        <Button size="floor" onClick={onStop}>
          {words.never}
        </Button>
      </div>
    </div>
  );
}
