import { useMemo } from 'react';
import type { ShopView } from '../../../contract/index.js';
import {
  type DialInAdvice,
  dialForPitch,
  dialInAdvice,
  dialInOfRun,
  type MachineKnob,
  machineKnob,
  type PitchAdvice,
  pitchRangeOf,
  type SetUpSheet,
  type TriedString,
  turnsAdvice,
  type WindingMachine,
} from '../../../core/winding/index.js';
import { useReading } from '../../api/use-records.js';
import type { PositionAtHand } from '../dial-in/position-panel.js';
import type { Trial } from './run-count.js';
import { triedStrings } from './tried-strings.js';
import type { RunBook } from './use-run-book.js';

/** The dial-in of a run as it stands on this screen. */
export interface RunDialIn extends MachineKnob {
  /** In the order of the positions. */
  readonly positions: readonly PositionAtHand[];
  readonly traverse?: { readonly advice: PitchAdvice; readonly dial?: number };
  readonly hasPast: boolean;
  /** The string that is to be measured once more before it is believed. */
  readonly doubtful?: Trial;
}

/** Advice by the core, here in the browser: with no line too. Undefined where nothing is wound. */
export function useRunDialIn(book: RunBook, sheet: SetUpSheet, view: ShopView): RunDialIn | undefined {
  const { run, trials, readings } = book;
  const { shop, ids } = view;
  const past = useReading('past-dial-ins', { machineId: run.body.machineId }).data?.items;
  const machine = shop.machines.find(({ id }) => id === sheet.machineId);
  const recipe = shop.recipes.find(({ id }) => ids.recipes[id] === run.body.recipeId);
  const { strings, toMeasure } = triedStrings(trials, readings, sheet.firstOff);
  // A reading within a string changes nothing of the advice: it is reckoned anew when a string is whole.
  const told = JSON.stringify(strings);
  const { quantity } = run.body;
  const { seat } = shop;
  const advices = useMemo((): readonly DialInAdvice[] => {
    if (machine?.kind !== 'winder' || recipe?.construction.kind !== 'wound') return [];
    const work = { machine, recipe, quantity, ...(seat ? { seat } : {}) };
    return dialInAdvice(dialInOfRun(work, JSON.parse(told) as readonly TriedString[], past ?? []));
  }, [machine, recipe, quantity, seat, told, past]);
  if (machine?.kind !== 'winder' || !recipe || advices.length === 0) return undefined;
  const traverse = traverseOf(machine, sheet, trials);
  const lastAt = (position: number) => trials.findLast((trial) => trial.position === position + 1);
  const doubtfulAt = advices.findIndex(({ decision }) => decision.kind === 'measure-again');
  const doubtful = doubtfulAt < 0 || toMeasure.has(doubtfulAt) ? undefined : lastAt(doubtfulAt);
  return {
    ...machineKnob(machine, recipe.construction),
    positions: advices.map((advice, position) => ({
      advice,
      standsAt: trials.findLast((trial) => trial.position === position + 1 && trial.setting !== undefined)
        ?.setting,
      isToMeasure: toMeasure.has(position),
    })),
    ...(traverse ? { traverse } : {}),
    hasPast: past !== undefined,
    ...(doubtful ? { doubtful } : {}),
  };
}

/** Of the outermost layer: that is the one which is seen. */
function traverseOf(
  machine: WindingMachine,
  sheet: SetUpSheet,
  trials: readonly Trial[],
): RunDialIn['traverse'] {
  const layer = sheet.layers.at(-1);
  const range = pitchRangeOf(machine);
  const seen = trials.flatMap((trial) => trial.seen ?? []);
  const advice = layer && range && turnsAdvice(layer.wrapPitchM, seen, range);
  if (!advice) return undefined;
  if (machine.drive !== 'gear' || !('toM' in advice)) return { advice };
  const set = dialForPitch(machine, { pitchM: advice.toM, touchingPitchM: 0 });
  return { advice, ...(set.ok ? { dial: set.value.dial } : {}) };
}
