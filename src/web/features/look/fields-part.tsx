import {
  Checkbox,
  NativeSelect,
  Pagination,
  PasswordInput,
  SegmentedControl,
  Slider,
  TextInput,
} from '@mantine/core';
import { useState } from 'react';
import { AmountField } from '../../parts/amount-field.js';
import { ScanBox } from '../../parts/scan-box.js';
import { useWords } from '../../words/language.js';
import { LOOK_WORDS } from '../../words/look.js';
import styles from './look.module.css';
import { Part } from './part.js';

/** What is filled in, in every state. */
export function FieldsPart() {
  const words = useWords(LOOK_WORDS);
  const [amount, setAmount] = useState('99');
  const [scanned, setScanned] = useState<string>();
  const [segment, setSegment] = useState<string>(words.segmentNames[0]);
  const [page, setPage] = useState(2);
  return (
    <Part title={words.fields}>
      <div className={styles.fields}>
        <TextInput label={words.field} description={words.fieldHint} />
        <TextInput label={words.fieldWrong} error={words.fieldFault} defaultValue="99" />
        <TextInput label={words.fieldDisabled} disabled defaultValue={words.player} />
        <NativeSelect label={words.choice} data={[...words.choices]} />
        <PasswordInput label={words.secret} defaultValue={words.player} />
        <AmountField
          label={words.columns.count}
          rule={{ least: 1, most: 24, whole: true, bare: '', units: { '': 1 } }}
          text={amount}
          onText={setAmount}
        />
        <Checkbox label={words.tick} defaultChecked />
        <Checkbox label={words.tickOff} />
      </div>
      <div>
        <SegmentedControl
          aria-label={words.segments}
          data={[...words.segmentNames]}
          value={segment}
          onChange={setSegment}
        />
      </div>
      <div className={styles.slider}>
        <Slider
          thumbLabel={words.slider}
          defaultValue={30}
          marks={[
            { value: 0, label: words.sliderLess },
            { value: 100, label: words.sliderMore },
          ]}
        />
      </div>
      <Pagination
        total={5}
        value={page}
        onChange={setPage}
        getItemProps={(number) => ({ 'aria-label': `${words.pages} ${number}` })}
        withControls={false}
      />
      <ScanBox label={words.scan} hint={words.scanHint} onScan={setScanned} />
      <p role="status">{scanned === undefined ? '' : words.scanned(scanned)}</p>
    </Part>
  );
}
