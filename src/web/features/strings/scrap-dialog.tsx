import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { useDo } from '../../api/use-do.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { readAmount } from '../../parts/read-amount.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import type { LotRecord } from './lot-record.js';
import { COUNT_RULE } from './stock-take.js';
import type { BinRecord } from './strings-book.js';

interface ScrapDialogProps {
  readonly lot: LotRecord;
  readonly from: BinRecord;
  readonly there: number;
  readonly onClose: () => void;
}

/** Some strings of a lot thrown away, with the reason. */
export function ScrapDialog({ lot, from, there, onClose }: ScrapDialogProps) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const scrap = useDo('scrap-strings');
  const [text, setText] = useState('');
  const [reason, setReason] = useState('');
  const rule = { ...COUNT_RULE, least: 1, most: Math.max(1, there) };
  const count = readAmount(text, rule);
  const send = async () => {
    if (!count.ok) return;
    const answer = await scrap.run({
      lotId: lot.id,
      binId: from.id,
      count: count.value,
      reason: reason.trim(),
    });
    if (!answer.ok) return;
    tell({ text: words.scrapped(figures.number(count.value)) });
    onClose();
  };
  return (
    <Dialog
      open
      title={words.scrapTitle(lot.body.name, from.body.name)}
      onClose={onClose}
      actions={
        <Button
          kind="grave"
          busy={scrap.busy}
          disabled={!count.ok || reason.trim() === ''}
          onClick={() => void send()}
        >
          {words.scrapSome}
        </Button>
      }
    >
      <AmountField
        label={words.howMany}
        description={words.ofThere(figures.number(there))}
        rule={rule}
        text={text}
        onText={setText}
      />
      <TextInput
        label={words.reason}
        value={reason}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <ProblemBox problem={scrap.problem} />
    </Dialog>
  );
}
