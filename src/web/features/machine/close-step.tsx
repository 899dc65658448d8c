import { NativeSelect } from '@mantine/core';
import { useState } from 'react';
import { freshId } from '../../api/fresh-id.js';
import { useAllRecords } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { AmountField } from '../../parts/amount-field.js';
import { BigWord } from '../../parts/big-word.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { ScanBox } from '../../parts/scan-box.js';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { CLOSE_WORDS } from '../../words/machine.js';
import { binsFor } from './bins-for.js';
import { COUNT_RULE, closeFormOf, closingOf } from './close-form.js';
import { GiveUpRun } from './give-up-run.js';
import { grossRule } from './spool-weight.js';
import type { RunBook } from './use-run-book.js';

/** The end of a run: counts as they were made, to be put right; weights of the spools; the bin. */
export function CloseStep({ book: { run, count } }: { readonly book: RunBook }) {
  const words = useWords(CLOSE_WORDS);
  const figures = useFigures();
  const sound = useSound();
  const close = useQueued('close-run');
  const bins = useAllRecords('bin').data ?? [];
  const spools = (useAllRecords('spool').data ?? []).filter(({ id }) => run.body.spoolIds.includes(id));
  const { own, free } = binsFor(bins, run.body.stringKey);
  const [typed, setTyped] = useState(() => closeFormOf(count, close.editing?.input));
  const [lotId] = useState(() => close.editing?.input.lotId ?? freshId());
  const [strayBin, setStrayBin] = useState<string>();
  const form = { ...typed, binId: typed.binId ?? own[0]?.id };
  const closing = closingOf(form, { run, spools, lotId, lotName: words.lotName(run.body.name) });
  const enter = async () => {
    if (!closing) return;
    await close.enter(closing, { label: words.closed(run.body.name), place: `/machine?run=${run.id}` });
    sound.accepted();
  };
  const scanBin = (text: string) => {
    const bin = bins.find(({ body }) => body.name.toLowerCase() === text.toLowerCase());
    if (bin && [...own, ...free].includes(bin)) {
      sound.accepted();
      setStrayBin(undefined);
      return setTyped({ ...typed, binId: bin.id });
    }
    sound.refused();
    setStrayBin(bin ? words.binWrong(bin.body.name) : words.binUnknown(text));
  };
  return (
    <section aria-label={words.title} className={styles.part}>
      <h2>{words.title}</h2>
      <p>{words.lead}</p>
      <p className={styles.caution}>{words.handsCaution}</p>
      <div className={styles.fields}>
        <AmountField
          large
          label={words.good}
          description={words.goodHint(figures.number(count.good))}
          rule={COUNT_RULE}
          text={typed.good}
          onText={(good) => setTyped({ ...typed, good })}
        />
        {typed.scrap.map(({ reason, count: text }) => (
          <AmountField
            key={reason}
            large
            label={words.scrap(reason)}
            rule={COUNT_RULE}
            text={text}
            onText={(changed) =>
              setTyped({
                ...typed,
                scrap: typed.scrap.map((each) =>
                  each.reason === reason ? { reason, count: changed } : each,
                ),
              })
            }
          />
        ))}
        {typed.scrap.length === 0 && <p className="quiet">{words.noScrap}</p>}
      </div>
      {spools.length > 0 && (
        <section aria-label={words.spools}>
          <h3>{words.spools}</h3>
          <p className="quiet">{words.spoolsHint}</p>
          <div className={styles.fields}>
            {spools.map((spool) => (
              <AmountField
                key={spool.id}
                large
                label={spool.body.name}
                description={
                  spool.body.weighed
                    ? words.lastWeighed(figures.weight(spool.body.weighed.grossKg))
                    : words.neverWeighed
                }
                rule={grossRule(spool)}
                text={typed.weights[spool.id] ?? ''}
                onText={(text) => setTyped({ ...typed, weights: { ...typed.weights, [spool.id]: text } })}
              />
            ))}
          </div>
        </section>
      )}
      <div className={styles.fields}>
        <NativeSelect
          {...HINT_BELOW}
          label={words.bin}
          description={words.binHint}
          size="lg"
          value={form.binId ?? ''}
          onChange={(event) => setTyped({ ...typed, binId: event.currentTarget.value || undefined })}
          data={[
            { value: '', label: words.chooseBin },
            { group: words.binsOfKind, items: own.map(optionOf) },
            { group: words.binsFree, items: free.map(optionOf) },
          ]}
        />
        <ScanBox label={words.scanBin} hint={words.scanBinHint} onScan={scanBin} />
      </div>
      {strayBin !== undefined && <BigWord tone="stopped" word={words.bin} more={strayBin} />}
      <div className={styles.onward}>
        {form.binId === undefined && <p>{words.needsBin}</p>}
        <Button kind="main" size="floor" disabled={!closing} onClick={() => void enter()}>
          {words.close}
        </Button>
        <GiveUpRun run={run} />
      </div>
    </section>
  );
}

const optionOf = ({ id, body }: { readonly id: string; readonly body: { readonly name: string } }) => ({
  value: id,
  label: body.name,
});
