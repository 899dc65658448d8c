import type { SpoolRecord } from './wire-book.js';

/** What a weighing would say, before it is written. */
export interface Weighing {
  readonly netKg: number;
  /** By the scale less by the books; negative where wire is missing. */
  readonly differenceKg: number;
  /** That difference as a share of what the books say; undefined where they say nothing is there. */
  readonly share: number | undefined;
  readonly isLighterThanEmpty: boolean;
  /** Heavier than at its last weighing: somebody must say why. */
  readonly isHeavierThanBefore: boolean;
  readonly empties: boolean;
}

export function weighing({ body }: Pick<SpoolRecord, 'body'>, onBookKg: number, grossKg: number): Weighing {
  const netKg = tidy(grossKg - body.tareKg);
  const differenceKg = tidy(netKg - onBookKg);
  return {
    netKg,
    differenceKg,
    share: onBookKg > 0 ? differenceKg / onBookKg : undefined,
    isLighterThanEmpty: netKg < 0,
    isHeavierThanBefore: body.weighed !== undefined && grossKg > body.weighed.grossKg,
    empties: netKg === 0,
  };
}

/** To the milligram, as the ledger keeps it. */
const tidy = (kg: number): number => Math.round(kg * 1e6) / 1e6;
