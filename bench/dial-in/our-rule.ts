import { type DialInAim, type DialInStep, dialInAdvice, USUAL_AIM } from '../../src/core/winding/index.js';
import { PLACES, type Scene } from './scene.js';

/** What a dial-in came to at one position. */
export interface Outcome {
  /** Strings wound until the run was let go. */
  readonly strings: number;
  /** Of these, how many were out of tolerance. */
  readonly outOfTolerance: number;
  /** Share of the strings of the run that will be good. */
  readonly goodShare: number;
  /** Error of the process when it was let go, m. */
  readonly errorM: number;
  /** How sure the rule said it was. */
  readonly saidSure: number;
  readonly moves: number;
}

export const RUN_STRINGS = 144;

/** Our rule at work, as a winder who does what the screen says. Two positions are let go each in its own time. */
export function dialInByOurRule(scene: Scene, aim: Partial<DialInAim> = {}): readonly Outcome[] {
  const run = scene.begin();
  const { knob, toleranceM } = scene.character;
  const steps: DialInStep[] = [];
  const outcomes: (Outcome | undefined)[] = Array.from({ length: run.positions }, () => undefined);
  const tally = outcomes.map(() => ({ strings: 0, outOfTolerance: 0, moves: 0 }));
  const advice = () =>
    dialInAdvice({ knob, aim: { ...USUAL_AIM, toleranceM, ...aim }, first: scene.first, steps });

  const doAsTold = (): void => {
    for (const { position, decision, odds } of advice()) {
      if (outcomes[position]) continue;
      const counted = tally[position]!;
      const letGo = (): void => {
        const truth = run.truth(position);
        outcomes[position] = {
          ...counted,
          goodShare: truth.goodShare(RUN_STRINGS),
          errorM: truth.processErrorM,
          saidSure: odds.sure,
        };
      };
      if (decision.kind === 'start') {
        run.set(position, decision.move.to, decision.move.past);
        steps.push({ kind: 'set', position, setting: decision.move.to, chosenBy: 'advice' });
      } else if (decision.kind === 'adjust') {
        run.set(position, decision.move.to, decision.move.past);
        steps.push({ kind: 'set', position, setting: decision.move.to, chosenBy: 'advice' });
        counted.moves += 1;
        if (decision.next === 'run') letGo();
      } else if (decision.kind === 'run' || decision.kind === 'stop') letGo();
    }
  };

  doAsTold();
  while (outcomes.some((outcome) => !outcome)) {
    run.wind();
    for (let position = 0; position < run.positions; position++) {
      if (!outcomes[position]) {
        const counted = tally[position]!;
        counted.strings += 1;
        if (Math.abs(run.truth(position).stringErrorM) > toleranceM) counted.outOfTolerance += 1;
      }
      steps.push({ kind: 'string', position, errorsM: run.measure(position, PLACES) });
    }
    for (const { position, decision } of advice()) {
      if (decision.kind === 'measure-again') {
        steps.push({ kind: 'again', position, errorsM: run.measure(position, PLACES) });
      }
    }
    doAsTold();
  }
  return outcomes.map((outcome) => outcome!);
}
