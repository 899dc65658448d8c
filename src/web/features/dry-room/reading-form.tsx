import { TextInput } from '@mantine/core';
import { type FormEvent, useId, useRef, useState } from 'react';
import { type DryRoomLimits, isDryEnough } from '../../../core/stock/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useQueued } from '../../outbox/index.js';
import { AmountField } from '../../parts/amount-field.js';
import { BigWord } from '../../parts/big-word.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';
import { useClimateWords } from './use-climate-words.js';

const TEMPERATURE: AmountRule = { units: { '°C': 1, C: 1, '': 1 }, bare: '°C', least: -40, most: 80 };
/** Kept as a share. */
const HUMIDITY: AmountRule = { units: { '%': 0.01 }, bare: '%', least: 0, most: 1 };

interface ReadingFormProps {
  readonly rooms: readonly string[];
  readonly room: string;
  readonly onRoom: (room: string) => void;
  readonly limits: DryRoomLimits;
  readonly isOwn: boolean;
}

interface Climate {
  readonly temperatureC: number;
  readonly relativeHumidity: number;
}

/** Two numbers and Enter; what they mean is said at once. */
export function ReadingForm({ rooms, room, onRoom, limits, isOwn }: ReadingFormProps) {
  const words = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  const sound = useSound();
  const climate = useClimateWords(limits);
  const record = useQueued('record-dry-room');
  const mended = record.editing?.input;
  const known = useId();
  const warm = useRef<HTMLInputElement>(null);
  const damp = useRef<HTMLInputElement>(null);
  const [temperature, setTemperature] = useState(mended ? String(mended.temperatureC) : '');
  const [humidity, setHumidity] = useState(mended ? figures.number(mended.relativeHumidity * 100, 1) : '');
  const [entered, setEntered] = useState<Climate>();
  const temperatureC = readAmount(temperature, TEMPERATURE);
  const relativeHumidity = readAmount(humidity, HUMIDITY);
  const isWhole = temperatureC.ok && relativeHumidity.ok && room.trim() !== '';
  const enter = async () => {
    if (!temperatureC.ok) return warm.current?.focus();
    if (!relativeHumidity.ok || room.trim() === '') return damp.current?.focus();
    const reading = { temperatureC: temperatureC.value, relativeHumidity: relativeHumidity.value };
    await record.enter(
      { id: freshId(), room: room.trim(), ...reading },
      { label: words.label(room.trim(), climate.reading(reading)), place: '/dry-room' },
    );
    if (isDryEnough(reading, limits)) sound.accepted();
    else sound.refused();
    setEntered(reading);
    setTemperature('');
    setHumidity('');
    warm.current?.focus();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void enter();
  };
  return (
    <form onSubmit={submit} className={styles.entry}>
      <div className={styles.fields}>
        <TextInput
          {...HINT_BELOW}
          label={words.room}
          description={words.roomHint}
          size="lg"
          value={room}
          list={known}
          autoComplete="off"
          onChange={(event) => onRoom(event.currentTarget.value)}
        />
        <datalist id={known}>
          {rooms.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
        <AmountField
          large
          label={words.temperature}
          description={words.temperatureHint(figures.number(limits.leastC), figures.number(limits.mostC))}
          rule={TEMPERATURE}
          text={temperature}
          onText={setTemperature}
          inputRef={warm}
          onEnter={() => damp.current?.focus()}
        />
        <AmountField
          large
          label={words.humidity}
          description={words.humidityHint(figures.number(limits.mostHumidity * 100))}
          rule={HUMIDITY}
          text={humidity}
          onText={setHumidity}
          inputRef={damp}
          onEnter={() => void enter()}
        />
      </div>
      <p className="quiet small">{isOwn ? words.basis.shop : words.basis.practice}</p>
      <div>
        <Button kind="main" size="floor" type="submit" disabled={!isWhole}>
          {words.enter}
        </Button>
      </div>
      {entered &&
        (isDryEnough(entered, limits) ? (
          <BigWord tone="done" word={words.within} more={words.withinMore(climate.reading(entered))} />
        ) : (
          <BigWord tone="care" word={words.outside} more={words.outsideMore(climate.faults(entered))} />
        ))}
    </form>
  );
}
