import { getRouteApi } from '@tanstack/react-router';
import { useRecord } from '../api/use-records.js';
import { RunRoom } from '../features/runs/run-room.js';
import { Asked } from '../parts/asked.js';
import { useWords } from '../words/language.js';
import { RUNS_WORDS } from '../words/runs.js';

const route = getRouteApi('/runs/$id');

/** The record of one run. */
export function RunPage() {
  const words = useWords(RUNS_WORDS);
  const { id } = route.useParams();
  const run = useRecord('run', id);
  return (
    <Asked question={run} what={words.what}>
      {(record) => <RunRoom key={id} run={record} />}
    </Asked>
  );
}
