import { TextInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { type FormEvent, useId, useState } from 'react';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import { type RecordOf, useRecords } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { nextNumber } from './next-number.js';

interface OrderDialogProps {
  readonly record: RecordOf<'request'>;
  readonly open: boolean;
  readonly onClose: () => void;
}

/** Makes an order of an answered request: under which number, and due when. */
export function OrderDialog({ record, open, onClose }: OrderDialogProps) {
  const { next } = useWords(REQUESTS_WORDS);
  const formId = useId();
  const [isBusy, setBusy] = useState(false);
  return (
    <Dialog
      title={next.orderTitle(record.body.player)}
      open={open}
      onClose={onClose}
      actions={
        <Button kind="main" type="submit" form={formId} busy={isBusy}>
          {next.doOrder}
        </Button>
      }
    >
      <OrderForm record={record} formId={formId} onBusy={setBusy} />
    </Dialog>
  );
}

interface OrderFormProps {
  readonly record: RecordOf<'request'>;
  readonly formId: string;
  readonly onBusy: (busy: boolean) => void;
}

function OrderForm({ record, formId, onBusy }: OrderFormProps) {
  const { next } = useWords(REQUESTS_WORDS);
  const tell = useTell();
  const navigate = useNavigate();
  const ordering = useDo('order-request');
  const newest = useRecords('order', { limit: 1 }).data?.items[0]?.body.number ?? '';
  const [orderId] = useState(freshId);
  const [typed, setTyped] = useState<string>();
  const [due, setDue] = useState('');
  const [isTried, setTried] = useState(false);
  const number = typed ?? nextNumber(newest);
  const order = async (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (number.trim() === '' || due === '') return;
    onBusy(true);
    const done = await ordering.run({
      requestId: record.id,
      expectedVersion: record.version,
      orderId,
      number: number.trim(),
      due,
    });
    onBusy(false);
    if (!done.ok) return;
    tell({ text: next.ordered(number.trim()) });
    await navigate({ to: '/orders/$id', params: { id: orderId } });
  };
  return (
    <form id={formId} className={desk.form} onSubmit={(event) => void order(event)}>
      <p>{next.orderLead(record.body.quantity, record.body.answer?.setName ?? '')}</p>
      <TextInput
        label={next.number}
        value={number}
        autoComplete="off"
        error={isTried && number.trim() === '' ? next.numberNeeded : undefined}
        onChange={(event) => setTyped(event.currentTarget.value)}
      />
      <TextInput
        type="date"
        label={next.due}
        value={due}
        error={isTried && due === '' ? next.dueNeeded : undefined}
        onChange={(event) => setDue(event.currentTarget.value)}
      />
      <ProblemBox problem={ordering.problem} />
    </form>
  );
}
