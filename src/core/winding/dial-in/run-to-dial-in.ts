import type { Knob } from './knob.js';
import type { PastDialIn } from './past-dial-in.js';

/** A run about to be dialled in, and what the shop remembers. */
export interface RunToDialIn {
  readonly machineId: string;
  readonly family: string;
  readonly knob: Knob;
  readonly toleranceM: number;
  /** Where each position would be set if the reckoning were right. */
  readonly reckonedSettings: readonly number[];
  /** In order of time. */
  readonly past: readonly PastDialIn[];
}
