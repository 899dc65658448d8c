import type { RecordOf } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';

/** Stops a run for a while, or goes on with it. */
export function PauseButton({ run }: { readonly run: RecordOf<'run'> }) {
  const words = useWords(MACHINE_WORDS);
  const pause = useQueued('pause-run');
  const resume = useQueued('resume-run');
  const asked = { runId: run.id, expectedVersion: run.version };
  const { name } = run.body;
  return run.state === 'running' ? (
    <Button size="floor" onClick={() => void pause.enter(asked, { label: words.paused(name) })}>
      {words.pause}
    </Button>
  ) : (
    <Button kind="main" size="floor" onClick={() => void resume.enter(asked, { label: words.resumed(name) })}>
      {words.resume}
    </Button>
  );
}
