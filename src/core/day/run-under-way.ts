import type { Recipe } from '../recipes/index.js';
import type { StringSpec } from '../sets/index.js';
import type { StringStock, WireReserved } from '../stock/index.js';
import { runMinutes, stringWork, wirePerString } from '../winding/index.js';
import type { Shop } from './shop.js';
import { whatIsKnown } from './what-is-known.js';

/** A run that was settled before this plan and is not ended: what it brings, takes and keeps busy is not to be planned again. */
export interface RunUnderWay {
  readonly id: string;
  /** As the floor calls it. */
  readonly name: string;
  readonly state: 'planned' | 'running' | 'paused';
  readonly machineId: string;
  /** As the run was set up by it: it may have been edited or retired since. */
  readonly recipe: Recipe;
  readonly spec: StringSpec;
  /** Good strings wanted of it. */
  readonly quantity: number;
  /** Good strings made already; they lie at the machine until the run is closed. */
  readonly made: number;
  /** Spools on the machine for it. */
  readonly spoolIds: readonly string[];
  /** Wire that is off the books for it already, by the wire's id: of spools that were taken off. */
  readonly takenKg: Readonly<Record<string, number>>;
  /** Where its strings will lie, and how many of the kind are kept there; 0 where it is made to order. */
  readonly binId: string;
  readonly reorderLevel: number;
}

/** Runs in the order in which their machine will end them: what runs, what was paused, what nobody began. */
export const inOrderOfEnd = (runs: readonly RunUnderWay[]): readonly RunUnderWay[] =>
  (['running', 'paused', 'planned'] as const).flatMap((state) => runs.filter((run) => run.state === state));

/** What a run will bring to the shelf at its close; its lot bears the run's id until then. */
export const stringsToCome = ({
  id,
  spec,
  quantity,
  made,
  binId,
  reorderLevel,
}: RunUnderWay): StringStock => ({
  spec,
  count: Math.max(quantity, made),
  binId,
  lot: id,
  reorderLevel,
});

/**
 * Wire that the books have on hand and a run will have taken when it is closed: of all its strings, those made already
 * included, since wire leaves the books at the close; with the scrap of the run and of dialling in, everything changed.
 */
export function wireStillTaken(run: RunUnderWay, shop: Shop): readonly WireReserved[] {
  const wire = wirePerString(run.recipe, run.spec.lengthM, { end: run.spec.end, ...seatOf(shop) });
  if (!wire.ok) return [];
  const scrap = shop.machines.find(({ id }) => id === run.machineId)?.changeScrap;
  const dialledIn = Object.values<number>({ ...scrap }).reduce((sum, each) => sum + each, 0);
  const strings = Math.max(run.quantity, run.made) * (1 + shop.rates.runScrapShare) + dialledIn;
  return wire.value.map(({ wireId, kg }) => ({
    wireId,
    kg: Math.max(0, kg * strings - (run.takenKg[wireId] ?? 0)),
    spoolIds: run.spoolIds,
  }));
}

/** Minutes that a run's machine still winds, its set-up left out; none where the machine was changed and could not any more. */
export function minutesLeft(run: RunUnderWay, shop: Shop): number {
  const { recipe, spec, quantity, made } = run;
  const machine = shop.machines.find(({ id }) => id === run.machineId);
  const { lengthM, end } = spec;
  const work = machine && stringWork({ machine, recipe, lengthM, end, ...whatIsKnown(shop) });
  if (!work?.ok) return 0;
  return runMinutes(work.value, Math.max(0, quantity - made) * (1 + shop.rates.runScrapShare));
}

const seatOf = ({ seat }: Shop) => (seat ? { seat } : {});
