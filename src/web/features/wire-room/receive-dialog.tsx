import { NativeSelect, TextInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useRef, useState } from 'react';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import { CertificateWords } from './certificate-words.js';
import {
  DIAMETER_RULE,
  GROSS_RULE,
  nextSpoolName,
  type ReceiveDraft,
  readReceipt,
  TARE_RULE,
  TENSILE_RULE,
} from './receive-draft.js';
import { unitWeightOf, type WireLine } from './wire-book.js';

interface ReceiveDialogProps {
  readonly lines: readonly WireLine[];
  readonly wireId?: string;
  readonly onClose: () => void;
}

/** A spool comes in: onto the scale, and what its certificate says held against the wire's standard. */
export function ReceiveDialog({ lines, wireId = '', onClose }: ReceiveDialogProps) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const navigate = useNavigate();
  const receive = useDo('receive-spool');
  const [id] = useState(freshId);
  const [draft, setDraft] = useState<ReceiveDraft>(() => emptyDraft(lines, wireId));
  const tareField = useRef<HTMLInputElement>(null);
  const send = useRef<HTMLButtonElement>(null);
  const change = (part: Partial<ReceiveDraft>) => setDraft((before) => ({ ...before, ...part }));
  const { receiving } = words;
  const read = readReceipt(draft);
  const line = lines.find(({ wire }) => wire.id === draft.wireId);
  const take = async () => {
    if (!read.input) return;
    const answer = await receive.run({ id, ...read.input });
    if (!answer.ok) return;
    tell({ text: words.takenIn(answer.value.body.name) });
    onClose();
    await navigate({ to: '/wire', search: { spool: answer.value.id } });
  };
  return (
    <Dialog
      open
      title={words.receive}
      onClose={onClose}
      actions={
        <Button ref={send} kind="main" busy={receive.busy} disabled={!read.input} onClick={() => void take()}>
          {words.takeIn}
        </Button>
      }
    >
      <p>{words.receiveLead}</p>
      <NativeSelect
        label={receiving.wire}
        value={draft.wireId}
        data={[
          { value: '', label: receiving.choose },
          ...lines.map(({ wire }) => ({ value: wire.id, label: wire.body.name })),
        ]}
        onChange={(event) => {
          const chosen = event.currentTarget.value;
          change({ wireId: chosen, name: offeredName(lines, chosen) });
        }}
      />
      <div className={desk.fields}>
        <TextInput
          label={receiving.name}
          value={draft.name}
          onChange={(event) => change({ name: event.currentTarget.value })}
        />
        <TextInput
          label={receiving.lot}
          value={draft.lot}
          onChange={(event) => change({ lot: event.currentTarget.value })}
        />
        <AmountField
          label={receiving.gross}
          description={receiving.weightHint}
          rule={GROSS_RULE}
          text={draft.gross}
          onText={(gross) => change({ gross })}
          onEnter={() => tareField.current?.focus()}
        />
        <AmountField
          inputRef={tareField}
          label={receiving.tare}
          rule={TARE_RULE}
          text={draft.tare}
          onText={(tare) => change({ tare })}
          onEnter={() => send.current?.focus()}
        />
      </div>
      {read.netKg !== undefined && line && (
        <p role="status" className={read.netKg > 0 ? undefined : 'care'}>
          {read.netKg > 0
            ? words.onSpool(figures.weight(read.netKg), figures.metres(read.netKg / unitWeightOf(line.wire)))
            : words.nothingOnIt}
        </p>
      )}
      <fieldset className={desk.bare}>
        <legend className={desk.label}>{receiving.certificate}</legend>
        <div className={desk.fields}>
          <TextInput
            {...HINT_BELOW}
            label={receiving.number}
            value={draft.certificate}
            onChange={(event) => change({ certificate: event.currentTarget.value })}
          />
          <AmountField
            label={receiving.diameter}
            description={receiving.diameterHint}
            rule={DIAMETER_RULE}
            text={draft.diameter}
            onText={(diameter) => change({ diameter })}
          />
          <AmountField
            label={receiving.tensile}
            description={receiving.tensileHint}
            rule={TENSILE_RULE}
            text={draft.tensile}
            onText={(tensile) => change({ tensile })}
          />
        </div>
      </fieldset>
      {line && <CertificateWords wire={line.wire} diameterM={read.diameterM} tensilePa={read.tensilePa} />}
      <ProblemBox problem={receive.problem} />
    </Dialog>
  );
}

const emptyDraft = (lines: readonly WireLine[], wireId: string): ReceiveDraft => ({
  wireId,
  name: offeredName(lines, wireId),
  lot: '',
  gross: '',
  tare: '',
  certificate: '',
  diameter: '',
  tensile: '',
});

function offeredName(lines: readonly WireLine[], wireId: string): string {
  const line = lines.find(({ wire }) => wire.id === wireId);
  const taken = lines.flatMap(({ spools, emptied }) =>
    [...spools, ...emptied].map(({ spool }) => spool.body.name),
  );
  return line
    ? nextSpoolName(
        line.wire.body.name,
        taken.filter((name) => name.startsWith(`${line.wire.body.name} / `)),
      )
    : '';
}
