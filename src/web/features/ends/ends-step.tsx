import { TextInput } from '@mantine/core';
import { endInWords, pullInWords, toPullInWords, whipInWords } from '../../../contract/index.js';
import { type EndSheet, piecesToPull } from '../../../core/winding/index.js';
import type { RecordOf } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import styles from '../../parts/floor.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { useRemembered } from '../machine/my-machine.js';
import { CheckEnd } from './check-end.js';
import { CutFrom, useCutFrom } from './cut-from.js';
import { EndsTable } from './ends-table.js';
import { PullsSay } from './pulls-say.js';
import { UndoEnd } from './undo-end.js';
import { useEndChecks } from './use-end-checks.js';
import { useEnterEnd } from './use-enter-end.js';
import { useJoint } from './use-joint.js';

interface EndsStepProps {
  readonly run: RecordOf<'run'>;
  readonly machineId: string;
  readonly ends: EndSheet;
  /** The record of the wire. */
  readonly wireId: string;
  readonly onOn?: () => void;
}

/** The ends of a run, checked one by one as the sheet says, and what all pulls so far tell. */
export function EndsStep({ run, machineId, ends: asStandard, wireId, onOn }: EndsStepProps) {
  const words = useWords(ENDS_WORDS);
  const [gauge, nameGauge] = useRemembered('pull-gauge', words.firstGauge);
  const from = useCutFrom(run, asStandard, wireId);
  const { ends, spoolId } = from;
  const checks = useEndChecks(run.id, ends.pull?.leastBreakingN);
  const joint = useJoint({ wireId, end: ends.end, machineId }, checks);
  const { enter, takeBack } = useEnterEnd({
    runId: run.id,
    runName: run.body.name,
    machineId,
    gauge,
    spoolId,
  });
  const toPull = piecesToPull(ends.quantity, joint);
  const pulled = checks.filter(({ pull }) => pull !== undefined).length;
  return (
    <section aria-label={words.checkTitle} className={styles.part}>
      <h2>{words.checkTitle}</h2>
      {ends.pull && <p className={styles.caution}>{whipInWords(ends.pull)}</p>}
      {ends.pull?.strengthFrom === 'certificate' && <p>{pullInWords(ends.pull)}</p>}
      <p>
        {toPullInWords(toPull)} {words.pulled(pulled, toPull.pieces)}
      </p>
      <div className={styles.fields}>
        <TextInput
          {...HINT_BELOW}
          label={words.gauge}
          description={words.gaugeHint}
          value={gauge}
          autoComplete="off"
          onChange={(event) => nameGauge(event.currentTarget.value)}
        />
        {ends.of === 'core' && <CutFrom from={from} />}
      </div>
      <CheckEnd
        runId={run.id}
        number={checks.length + 1}
        ends={ends}
        onCheck={(check) => void enter(checks.length + 1, check)}
      />
      <UndoEnd runId={run.id} />
      {checks.length === 0 ? (
        <Empty what={words.none} />
      ) : (
        <EndsTable
          rows={checks}
          numberOf={(row) => checks.indexOf(row) + 1}
          sheet={ends}
          onTakeBack={(number, id) => void takeBack(number, id)}
        />
      )}
      <PullsSay joint={joint} of={words.saysOf(ends.wireId, endInWords(ends.end))} />
      {onOn && (
        <div className={styles.onward}>
          <Button kind="main" size="floor" onClick={onOn}>
            {words.goOn}
          </Button>
        </div>
      )}
    </section>
  );
}
