import { NativeSelect, TextInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { materialInWords } from '../../../contract/index.js';
import type { StringMaterial } from '../../../core/recipes/index.js';
import { parseGauge } from '../../../core/units/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { MATERIALS } from '../recipes/recipe-list.js';
import { COUNT_RULE } from './stock-take.js';
import type { BinRecord } from './strings-book.js';

const LENGTH_RULE: AmountRule = { units: { mm: 0.001, m: 1, in: 0.0254 }, bare: 'mm', least: 0.3, most: 3 };
const COUNTED_RULE: AmountRule = { ...COUNT_RULE, least: 1 };

const EMPTY = {
  name: '',
  gauge: '',
  kind: 'wound' as 'plain' | 'wound',
  material: 'nickel-plated-steel' as StringMaterial,
  end: 'ball' as 'ball' | 'loop',
  length: '1000',
  binId: '',
  counted: '',
  reason: '',
};

interface EnterLotDialogProps {
  readonly bins: readonly BinRecord[];
  readonly onClose: () => void;
}

/** Strings that the shop had before it kept records, entered as a lot. */
export function EnterLotDialog({ bins, onClose }: EnterLotDialogProps) {
  const words = useWords(STRINGS_WORDS);
  const tell = useTell();
  const navigate = useNavigate();
  const enter = useDo('enter-lot');
  const [id] = useState(freshId);
  const [draft, setDraft] = useState(EMPTY);
  const change = (part: Partial<typeof EMPTY>) => setDraft((before) => ({ ...before, ...part }));
  const { entering } = words;
  const gauge = parseGauge(draft.gauge);
  const length = readAmount(draft.length, LENGTH_RULE);
  const counted = readAmount(draft.counted, COUNTED_RULE);
  const isWhole =
    gauge.ok &&
    length.ok &&
    counted.ok &&
    [draft.name, draft.binId, draft.reason].every((text) => text.trim());
  const send = async () => {
    if (!gauge.ok || !length.ok || !counted.ok || !isWhole) return;
    const { kind, end } = draft;
    const material = kind === 'plain' ? 'plain-steel' : draft.material;
    const answer = await enter.run({
      id,
      name: draft.name.trim(),
      spec: { gaugeThou: gauge.value, kind, material, end, lengthM: length.value },
      binId: draft.binId,
      counted: counted.value,
      reason: draft.reason.trim(),
    });
    if (!answer.ok) return;
    tell({ text: words.entered(answer.value.body.name) });
    onClose();
    await navigate({ to: '/strings', search: { lot: answer.value.id } });
  };
  return (
    <Dialog
      open
      title={words.enterLot}
      onClose={onClose}
      actions={
        <Button kind="main" busy={enter.busy} disabled={!isWhole} onClick={() => void send()}>
          {words.enter}
        </Button>
      }
    >
      <p>{words.enterLead}</p>
      <div className={desk.fields}>
        <TextInput
          label={entering.name}
          value={draft.name}
          onChange={(event) => change({ name: event.currentTarget.value })}
        />
        <TextInput
          label={entering.gauge}
          value={draft.gauge}
          onChange={(event) => change({ gauge: event.currentTarget.value })}
        />
        <NativeSelect
          label={entering.kind}
          value={draft.kind}
          data={(['wound', 'plain'] as const).map((value) => ({ value, label: entering.kinds[value] }))}
          onChange={(event) => change({ kind: event.currentTarget.value as typeof draft.kind })}
        />
        {draft.kind === 'wound' && (
          <NativeSelect
            label={entering.material}
            value={draft.material}
            data={MATERIALS.filter((value) => value !== 'plain-steel').map((value) => ({
              value,
              label: materialInWords(value),
            }))}
            onChange={(event) => change({ material: event.currentTarget.value as StringMaterial })}
          />
        )}
        <NativeSelect
          label={entering.end}
          value={draft.end}
          data={(['ball', 'loop'] as const).map((value) => ({ value, label: entering.ends[value] }))}
          onChange={(event) => change({ end: event.currentTarget.value as typeof draft.end })}
        />
        <AmountField
          label={entering.length}
          rule={LENGTH_RULE}
          text={draft.length}
          onText={(text) => change({ length: text })}
        />
        <NativeSelect
          label={entering.bin}
          value={draft.binId}
          data={[
            { value: '', label: words.choose },
            ...bins.map((bin) => ({ value: bin.id, label: bin.body.name })),
          ]}
          onChange={(event) => change({ binId: event.currentTarget.value })}
        />
        <AmountField
          label={entering.counted}
          rule={COUNTED_RULE}
          text={draft.counted}
          onText={(text) => change({ counted: text })}
        />
        <TextInput
          label={entering.reason}
          value={draft.reason}
          className={desk.whole}
          onChange={(event) => change({ reason: event.currentTarget.value })}
        />
      </div>
      <ProblemBox problem={enter.problem} />
    </Dialog>
  );
}
