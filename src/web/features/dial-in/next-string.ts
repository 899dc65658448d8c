import type { DialInAdvice, Knob } from '../../../core/winding/index.js';
import type { AmountRule } from '../../parts/read-amount.js';

/** What a string is wound at, and whose word that was. */
export interface Dialled {
  readonly setting: number;
  readonly setBy: 'advice' | 'override';
}

/** The setting of the next string by the advice: the knob is moved only where it says so. */
export function advisedSetting({ decision, odds }: DialInAdvice, standsAt: number | undefined): number {
  if (decision.kind === 'start' || decision.kind === 'adjust') return tidy(decision.move.to);
  return standsAt ?? tidy(odds.setting);
}

/** Whether the run may go: at once, or after a last turn of the knob. */
export const mayRun = ({ decision }: DialInAdvice): boolean =>
  decision.kind === 'run' || (decision.kind === 'adjust' && decision.next === 'run');

/** How a setting is typed: in the machine's unit or without. */
export const settingRule = ({ least, most }: Knob, unit: string): AmountRule => ({
  units: { '': 1, ...(unit === '' ? {} : { [unit]: 1 }) },
  bare: unit,
  least,
  most,
});

/** Steps of a knob add up with the last bits of their sum; nobody turns those. */
const tidy = (setting: number): number => Number(setting.toPrecision(10));
