import { NativeSelect } from '@mantine/core';
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

interface MoveDialogProps {
  readonly lot: LotRecord;
  readonly from: BinRecord;
  readonly there: number;
  readonly bins: readonly BinRecord[];
  readonly onClose: () => void;
}

/** Strings of a lot carried to another bin; a slip is carried back. */
export function MoveDialog({ lot, from, there, bins, onClose }: MoveDialogProps) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const move = useDo('move-strings');
  const [toId, setToId] = useState('');
  const [text, setText] = useState(String(there));
  const rule = { ...COUNT_RULE, least: 1, most: Math.max(1, there) };
  const count = readAmount(text, rule);
  const fitting = bins.filter(
    ({ id, body }) =>
      id !== from.id && (body.stringKey === undefined || body.stringKey === lot.body.stringKey),
  );
  const to = fitting.find(({ id }) => id === toId);
  const send = async () => {
    if (!count.ok || !to) return;
    const input = { lotId: lot.id, count: count.value };
    const answer = await move.run({ ...input, fromBinId: from.id, toBinId: to.id });
    if (!answer.ok) return;
    tell({
      text: words.moved(figures.number(count.value), to.body.name),
      undo: () => void move.run({ ...input, fromBinId: to.id, toBinId: from.id }),
    });
    onClose();
  };
  return (
    <Dialog
      open
      title={words.moveTitle(lot.body.name, from.body.name)}
      onClose={onClose}
      actions={
        <Button kind="main" busy={move.busy} disabled={!count.ok || !to} onClick={() => void send()}>
          {words.move}
        </Button>
      }
    >
      <NativeSelect
        label={words.moveTo}
        description={words.moveToHint}
        value={toId}
        data={[
          { value: '', label: words.choose },
          ...fitting.map(({ id, body }) => ({ value: id, label: body.name })),
        ]}
        onChange={(event) => setToId(event.currentTarget.value)}
      />
      <AmountField
        label={words.howMany}
        description={words.ofThere(figures.number(there))}
        rule={rule}
        text={text}
        onText={setText}
      />
      <ProblemBox problem={move.problem} />
    </Dialog>
  );
}
