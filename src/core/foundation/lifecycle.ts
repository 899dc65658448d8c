import { fail, type Result, succeed } from './result.js';

/** Where a record can stand, and the steps that lead from one place to the next. */
export interface Lifecycle<State extends string = string, Step extends string = string> {
  /** What it is the life of: `recipe`. */
  readonly of: string;
  readonly initial: State;
  readonly steps: Readonly<Record<Step, { readonly from: readonly State[]; readonly to: State }>>;
}

export interface StepRefused {
  readonly code: 'lifecycle.step-refused';
  readonly of: string;
  readonly state: string;
  readonly step: string;
  /** Steps that may be taken from there. */
  readonly allowed: readonly string[];
}

/** The state that a step leads to, or a refusal that names the steps that may be taken. */
export function takeStep<State extends string, Step extends string>(
  lifecycle: Lifecycle<State, Step>,
  state: string,
  step: Step,
): Result<State, StepRefused> {
  const { from, to } = lifecycle.steps[step];
  if ((from as readonly string[]).includes(state)) return succeed(to);
  return fail({
    code: 'lifecycle.step-refused',
    of: lifecycle.of,
    state,
    step,
    allowed: stepsFrom(lifecycle, state),
  });
}

/** Steps that may be taken from a state. */
export const stepsFrom = <State extends string, Step extends string>(
  { steps }: Lifecycle<State, Step>,
  state: string,
): readonly Step[] =>
  (Object.keys(steps) as Step[]).filter((step) => (steps[step].from as readonly string[]).includes(state));

/** A lifecycle with its states and steps kept as types. */
export const lifecycle = <State extends string, Step extends string>(
  life: Lifecycle<State, Step>,
): Lifecycle<State, Step> => life;
