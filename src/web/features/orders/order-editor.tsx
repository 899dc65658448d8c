import { Textarea, TextInput } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import { useDraft } from '../../api/use-draft.js';
import { Button, buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { RoomTitle } from '../../parts/room-title.js';
import { StaleBox } from '../../parts/stale-box.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { type OrderFaultLike, orderFaultsOf } from './order-faults.js';
import { orderFields } from './order-fields.js';
import { type FormFaults, orderForm, readOrderForm, withLine } from './order-form.js';
import { OrderLineFields } from './order-line-fields.js';
import type { OrderRecord } from './use-listed-orders.js';

interface OrderEditorProps {
  /** Left out for a new one. */
  readonly record?: OrderRecord;
  readonly onDone?: () => void;
}

/** An order by hand: a new one, or one that nobody packs yet. */
export function OrderEditor({ record, onDone }: OrderEditorProps) {
  const words = useWords(ORDERS_WORDS);
  const { date } = useFigures();
  const navigate = useNavigate();
  const [id] = useState(() => record?.id ?? freshId());
  const [faults, setFaults] = useState<FormFaults>();
  const { draft, change, base, newer, begin } = useDraft(record, orderForm);
  const { save, busy, problem } = useSaving(id);
  const write = async (version: number | undefined) => {
    const read = readOrderForm(draft);
    setFaults(read.ok ? undefined : read.fault);
    if (!read.ok || !(await save(read.value, version, base))) return;
    if (onDone) onDone();
    else await navigate({ to: '/orders/$id', params: { id } });
  };
  return (
    <form
      className={desk.room}
      onSubmit={(event) => {
        event.preventDefault();
        void write(base?.version);
      }}
    >
      <RoomTitle title={record ? words.changeTitle(record.body.number) : words.newTitle} />
      {newer && (
        <StaleBox
          current={orderFields(orderForm(newer), words, date)}
          yours={orderFields(draft, words, date)}
          busy={busy}
          onWriteYours={() => void write(newer.version)}
          onTakeCurrent={() => begin(newer)}
        />
      )}
      <div className={desk.fields}>
        <TextInput
          {...HINT_BELOW}
          label={words.number}
          description={words.numberHint}
          value={draft.number}
          error={faults?.number && words.faults.number}
          onChange={({ currentTarget: { value: number } }) => change({ number })}
        />
        <TextInput
          label={words.player}
          value={draft.player}
          onChange={({ currentTarget: { value: player } }) => change({ player })}
        />
        <TextInput
          label={words.due}
          type="date"
          value={draft.due}
          error={faults?.due && words.faults.due}
          onChange={({ currentTarget: { value: due } }) => change({ due })}
        />
        <Textarea
          label={words.note}
          size="md"
          autosize
          minRows={1}
          value={draft.note}
          onChange={({ currentTarget: { value: note } }) => change({ note })}
        />
      </div>
      {draft.lines.map((line, at) => (
        <OrderLineFields
          key={line.key}
          line={line}
          number={at + 1}
          faults={faults?.lines[line.key]}
          change={(part) =>
            change({
              lines: draft.lines.map((each) => (each.key === line.key ? { ...each, ...part } : each)),
            })
          }
          onTakeOut={
            draft.lines.length > 1
              ? () => change({ lines: draft.lines.filter(({ key }) => key !== line.key) })
              : undefined
          }
        />
      ))}
      <div className={desk.row}>
        <Button onClick={() => change({ lines: withLine(draft.lines) })}>{words.addLine}</Button>
      </div>
      {problem && problem.code !== 'stale-version' && (
        <>
          <ProblemBox problem={problem} />
          <LineFaults faults={orderFaultsOf(problem)} />
        </>
      )}
      <div className={desk.row}>
        <Button kind="main" type="submit" busy={busy}>
          {words.save}
        </Button>
        {onDone ? (
          <Button onClick={onDone}>{words.discard}</Button>
        ) : (
          <Link to="/orders" className={buttonClass()}>
            {words.discard}
          </Link>
        )}
      </div>
    </form>
  );
}

/** Where the shop names several places, each by itself. */
function LineFaults({ faults }: { readonly faults: readonly OrderFaultLike[] }) {
  if (faults.length < 2) return null;
  return (
    <ul className={desk.list}>
      {faults.map(({ line, what, mend }) => (
        <li key={`${line}${what}`}>
          <strong>{line}</strong>. {what} {mend}
        </li>
      ))}
    </ul>
  );
}

/** Saves, and offers the way back to how a kept order was. Gives whether it was done. */
function useSaving(id: string) {
  const words = useWords(ORDERS_WORDS);
  const tell = useTell();
  const { run, busy, problem } = useDo('save-order');
  const save = async (
    order: Extract<ReturnType<typeof readOrderForm>, { readonly ok: true }>['value'],
    expectedVersion: number | undefined,
    before: OrderRecord | undefined,
  ): Promise<boolean> => {
    const done = await run({ id, ...(expectedVersion === undefined ? {} : { expectedVersion }), ...order });
    if (!done.ok) return false;
    const was = before && readOrderForm(orderForm(before));
    const { version } = done.value;
    const undo = async () => {
      if (!was?.ok) return;
      const back = await run({ id, expectedVersion: version, ...was.value });
      tell(back.ok ? { text: words.asItWas(order.number) } : { text: back.fault.detail, kind: 'care' });
    };
    tell({ text: words.saved(order.number), ...(was?.ok ? { undo } : {}) });
    return true;
  };
  return { save, busy, problem };
}
