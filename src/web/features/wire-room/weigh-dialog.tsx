import { TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { useDo } from '../../api/use-do.js';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { Facts } from '../../parts/facts.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import { weighing } from './weighing.js';
import { type SpoolLine, unitWeightOf, type WireRecord } from './wire-book.js';

/** As scales for spools go; a number without a unit is kilograms. */
export const WEIGHT_RULE: AmountRule = { units: { kg: 1, g: 0.001 }, bare: 'kg', least: 0, most: 100 };

interface WeighDialogProps {
  readonly line: SpoolLine;
  readonly wire: WireRecord;
  readonly onClose: () => void;
}

/** A spool on the scale: the difference from the books is shown before it is written. */
export function WeighDialog({ line: { spool, kg }, wire, onClose }: WeighDialogProps) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const weigh = useDo('weigh-spool');
  const [gross, setGross] = useState('');
  const [reason, setReason] = useState('');
  const write = useRef<HTMLButtonElement>(null);
  const read = readAmount(gross, WEIGHT_RULE);
  const found = read.ok ? weighing(spool, kg, read.value) : undefined;
  const isWritable =
    found !== undefined && !found.isLighterThanEmpty && (!found.isHeavierThanBefore || reason.trim() !== '');
  const send = async () => {
    if (!read.ok || !isWritable) return;
    const answer = await weigh.run({
      spoolId: spool.id,
      expectedVersion: spool.version,
      grossKg: read.value,
      ...(reason.trim() === '' ? {} : { reason: reason.trim() }),
    });
    if (!answer.ok) return;
    tell({ text: words.weighed(spool.body.name, signed(answer.value.differenceMg / 1e6, figures.weight)) });
    onClose();
  };
  return (
    <Dialog
      open
      title={words.weighTitle(spool.body.name)}
      onClose={onClose}
      actions={
        <Button ref={write} kind="main" busy={weigh.busy} disabled={!isWritable} onClick={() => void send()}>
          {words.writeWeighing}
        </Button>
      }
    >
      <p>{words.weighLead}</p>
      <AmountField
        label={words.gross}
        description={words.receiving.weightHint}
        rule={WEIGHT_RULE}
        text={gross}
        onText={setGross}
        onEnter={() => write.current?.focus()}
        large
      />
      {found?.isLighterThanEmpty && <p className="care">{words.lighter}</p>}
      {found && !found.isLighterThanEmpty && (
        <Facts
          facts={[
            { name: words.weighing.book, value: figures.weight(kg) },
            { name: words.weighing.scale, value: figures.weight(found.netKg) },
            {
              name: words.weighing.difference,
              value: found.differenceKg === 0 ? words.agrees : signed(found.differenceKg, figures.weight),
              under: [
                ...(found.share === undefined
                  ? []
                  : [words.differenceShare(`${figures.number(found.share * 100, 1)} %`)]),
                figures.metres(found.differenceKg / unitWeightOf(wire)),
              ].join(', '),
              care: found.differenceKg < 0,
            },
          ]}
        />
      )}
      {found?.empties && spool.state !== 'quarantined' && <p>{words.willEmpty}</p>}
      {found?.isHeavierThanBefore && spool.body.weighed && (
        <p className="care">
          {words.heavier(figures.weight(spool.body.weighed.grossKg), figures.moment(spool.body.weighed.at))}
        </p>
      )}
      {found && !found.isLighterThanEmpty && (
        <TextInput
          label={found.isHeavierThanBefore ? words.whyNeeded : words.why}
          value={reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
      )}
      <ProblemBox problem={weigh.problem} />
    </Dialog>
  );
}

const signed = (kg: number, inFigures: (kg: number) => string): string =>
  `${kg > 0 ? '+' : ''}${inFigures(kg)}`;
