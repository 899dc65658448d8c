import Type from 'typebox';
import type { ArrangeTask, Day } from '../../core/day/index.js';
import { closed, date } from '../schemas/pieces.js';
import type { Ids } from './views.js';

/** A day's plan as it is in force, or as it would be if it were settled at this moment. */
export interface PlanView {
  /** Lanes, sheets, wire and costs of the plan; orders, roll and what cannot be made as they stand now. */
  readonly day: Day;
  /** Line of the day to the id of the order. */
  readonly orderIds: Readonly<Record<number, string>>;
  /** Orders that lots wait for or that are in the day, by id. */
  readonly orders: Readonly<Record<string, OrderInPlan>>;
  /** Name of the machine to the id of its record. */
  readonly machineIds: Ids;
  /** Left out while nothing is settled for the day. */
  readonly settled?: SettledPlan;
}

export interface OrderInPlan {
  readonly number: string;
  readonly player: string;
  readonly due: string;
}

export interface SettledPlan {
  readonly id: string;
  readonly version: number;
  readonly settledAt: string;
  readonly note: string;
  /** The run of a lot that is to start on the day, and how it stands. */
  readonly runs: Readonly<
    Record<string, { readonly id: string; readonly name: string; readonly state: string }>
  >;
  /** Lots that would be planned beside it now: wanted since it was settled. */
  readonly lotsSince: number;
  /** What can still be put elsewhere, as the core works with it beside the shop; left out where nothing can. */
  readonly movable?: Omit<ArrangeTask, 'shop'>;
}

export const planViewAnswer = Type.Unsafe<PlanView>({
  type: 'object',
  required: ['day', 'orderIds', 'orders', 'machineIds'],
  description:
    '`day` as `tautwork schema day` has it; `settled` where a plan is in force, with what of it can still be moved',
});
export const planViewQuery = closed({ date: Type.Optional(date) });
