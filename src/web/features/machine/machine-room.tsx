import type { ShopView } from '../../../contract/index.js';
import { type RecordOf, useAllRecords, useReading } from '../../api/use-records.js';
import { useShopView } from '../../api/use-shop.js';
import { Asked } from '../../parts/asked.js';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';
import { CoresRoom } from '../ends/cores-room.js';
import { ChooseMachine } from './choose-machine.js';
import { useMyMachine } from './my-machine.js';
import { RunRoom } from './run-room.js';
import { RunsPart } from './runs-part.js';
import { useMyCautions } from './use-cautions.js';
import { useRunHeardOf } from './use-runs-here.js';

/** One machine: what it runs and what comes next; or one of its runs, from the sheet to the close. */
export function MachineRoom({ runId }: { readonly runId: string | undefined }) {
  const words = useWords(MACHINE_WORDS);
  const machines = useAllRecords('machine');
  const shop = useShopView();
  // Asked for at the door, so that whatever is opened later without a line has them.
  useAllRecords('spool');
  useAllRecords('bin');
  const { machineId, choose } = useMyMachine();
  useReading('past-dial-ins', { machineId: machineId ?? '' }, { enabled: machineId !== undefined });
  useMyCautions(machineId);
  return (
    <Asked question={machines} what={words.what.machines}>
      {(all) => {
        const machine = all.find(({ id }) => id === machineId);
        if (!machine) return <ChooseMachine machines={all} onChoose={choose} />;
        if (runId === undefined) return <RunsPart machine={machine} onOther={() => choose(undefined)} />;
        return (
          <Asked question={shop} what={words.what.shop}>
            {(view) => <RunDoor key={runId} runId={runId} machine={machine} view={view} />}
          </Asked>
        );
      }}
    </Asked>
  );
}

interface RunDoorProps {
  readonly runId: string;
  readonly machine: RecordOf<'machine'>;
  readonly view: ShopView;
}

function RunDoor({ runId, machine, view }: RunDoorProps) {
  const words = useWords(MACHINE_WORDS);
  const { question, run } = useRunHeardOf(runId, machine.id);
  if (run) return <RunOrCores run={run} machine={machine} view={view} />;
  return (
    <Asked question={question} what={words.what.runs}>
      {(record) => <RunOrCores run={record} machine={machine} view={view} />}
    </Asked>
  );
}

interface RunOrCoresProps extends Omit<RunDoorProps, 'runId'> {
  readonly run: RecordOf<'run'>;
}

/** At the bench a wound string's run is its cores; everywhere else a run is itself. */
function RunOrCores({ run, machine, view }: RunOrCoresProps) {
  return machine.body.kind === 'bench' && run.body.spec.kind === 'wound' ? (
    <CoresRoom run={run} benchId={machine.id} view={view} />
  ) : (
    <RunRoom record={run} view={view} />
  );
}
