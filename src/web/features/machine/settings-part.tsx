import { useState } from 'react';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { useQueued } from '../../outbox/index.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';
import { useSound } from '../../parts/sound.js';
import { useWords } from '../../words/language.js';
import { SETTINGS_WORDS } from '../../words/machine.js';
import type { RunBook } from './use-run-book.js';

interface SettingsPartProps {
  readonly run: RunBook['run'];
  readonly sheet: SetUpSheet;
  /** The wrap tension is set by numbers of the machine's own. */
  readonly isInNumbers: boolean;
}

const PULL: AmountRule = {
  units: { N: 1, kgf: 9.80665, kg: 9.80665, g: 0.00980665, lbf: 4.4482216152605 },
  bare: 'N',
  least: 0.01,
  most: 2000,
};
const NUMBER: AmountRule = { units: { '': 1 }, bare: '', least: -1e6, most: 1e6 };
const RPM: AmountRule = { units: { '': 1 }, bare: '', least: 1, most: 100_000 };

/** What the machine is really set to, for later runs to lean on. What is left empty is not said. */
export function SettingsPart({ run, sheet, isInNumbers }: SettingsPartProps) {
  const words = useWords(SETTINGS_WORDS);
  const sound = useSound();
  const { enter } = useQueued('record-run-settings');
  const { settings } = run.body;
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  const text = (name: string, before: number | undefined) =>
    texts[name] ?? (before === undefined ? '' : String(before));
  const fields = [
    { name: 'core', label: words.core, rule: PULL, before: settings?.coreTensionN },
    ...sheet.layers.flatMap((_, at) => {
      const layer = settings?.layers[at];
      const of = sheet.layers.length === 1 ? undefined : at + 1;
      return [
        isInNumbers
          ? { name: `tension ${at}`, label: words.number(of), rule: NUMBER, before: layer?.dial }
          : { name: `tension ${at}`, label: words.tension(of), rule: PULL, before: layer?.tensionN },
        { name: `rpm ${at}`, label: words.rpm(of), rule: RPM, before: layer?.spindleRpm },
      ];
    }),
  ].map((field) => ({ ...field, text: text(field.name, field.before) }));
  const said = fields.filter((field) => field.text.trim() !== '');
  const read = new Map(said.map((field) => [field.name, readAmount(field.text, field.rule)]));
  const isReady = said.length > 0 && [...read.values()].every(({ ok }) => ok);
  const amountIn = (name: string): number | undefined => {
    const found = read.get(name);
    return found?.ok ? found.value : undefined;
  };
  const write = async () => {
    if (!isReady) return sound.refused();
    const coreTensionN = amountIn('core');
    const layers = sheet.layers.map((_, at) => {
      const tension = amountIn(`tension ${at}`);
      const spindleRpm = amountIn(`rpm ${at}`);
      return {
        ...(tension === undefined ? {} : isInNumbers ? { dial: tension } : { tensionN: tension }),
        ...(spindleRpm === undefined ? {} : { spindleRpm }),
      };
    });
    await enter(
      {
        runId: run.id,
        expectedVersion: run.version,
        layers,
        ...(coreTensionN === undefined ? {} : { coreTensionN }),
      },
      { label: words.entered },
    );
    sound.accepted();
    setTexts({});
  };
  return (
    <section aria-label={words.title} className={styles.entry}>
      <h3>{words.title}</h3>
      <p className="quiet">{settings ? words.written : words.lead}</p>
      <div className={styles.fields}>
        {fields.map(({ name, label, rule, text: shown }) => (
          <AmountField
            key={name}
            large
            label={label}
            rule={rule}
            text={shown}
            onText={(typed) => setTexts({ ...texts, [name]: typed })}
            onEnter={() => void write()}
          />
        ))}
      </div>
      <div className={styles.doing}>
        <Button size="floor" disabled={!isReady} onClick={() => void write()}>
          {words.write}
        </Button>
      </div>
    </section>
  );
}
