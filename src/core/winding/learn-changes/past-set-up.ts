import type { ChangeKind } from './change-kind.js';

/** A set-up that was made: what was changed, what the machine's record lets expect of it, and what it came to. */
export interface PastSetUp {
  readonly machineId: string;
  readonly kind: ChangeKind;
  /** By the machine's record for just this change, the length's minutes included. */
  readonly figureScrap: number;
  readonly figureMinutes: number;
  /** Strings scrapped from the start of the run until it was let run. */
  readonly scrap: number;
  /** From the start until it was let run; left out where that is not known. */
  readonly minutes?: number;
}
