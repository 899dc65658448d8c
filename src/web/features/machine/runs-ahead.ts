import type { BodyOf } from '../../../contract/index.js';
import type { RecordOf } from '../../api/use-records.js';

type Run = RecordOf<'run'>;
type Plan = BodyOf<'plan'>;

/** The runs of a machine as the winder takes them. */
export interface RunsAhead {
  /** Running, then paused. */
  readonly underWay: readonly Run[];
  /** Planned, in the order of the plan; those of no plan after them, the oldest first. */
  readonly planned: readonly Run[];
}

export function runsAhead(runs: readonly Run[], plans: readonly Plan[]): RunsAhead {
  const places = placesInPlan(plans);
  const placeOf = ({ id }: Run): number => places.get(id) ?? places.size;
  const ofState = (state: string) => runs.filter((run) => run.state === state);
  return {
    underWay: [...ofState('running'), ...ofState('paused')],
    planned: ofState('planned').toSorted(
      (one, other) => placeOf(one) - placeOf(other) || (one.createdAt < other.createdAt ? -1 : 1),
    ),
  };
}

/** When the strings of a run are promised, where the plan says so. */
export const dueOf = (runId: string, plans: readonly Plan[]): string | undefined =>
  plans.flatMap(({ runs }) => runs).find((line) => line.runId === runId)?.due;

/** Plans of several days one after the other, each in the order in which its runs begin. */
const placesInPlan = (plans: readonly Plan[]): ReadonlyMap<string, number> =>
  new Map(
    plans
      .toSorted((one, other) => (one.date < other.date ? -1 : 1))
      .flatMap(({ runs }) => runs.flatMap(({ runId }) => runId ?? []))
      .map((runId, place) => [runId, place]),
  );
