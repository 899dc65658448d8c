/** What the index needs to know of a lot at the moment a machine comes free. Minutes. */
export interface AtcsInput {
  readonly weight: number;
  readonly processMinutes: number;
  readonly dueMinute: number;
  readonly nowMinute: number;
  readonly setUpMinutes: number;
}

/** How far the rule looks ahead, in mean processing times (k1), and how it shuns set-ups, in mean set-ups (k2). */
export interface AtcsScale {
  readonly dueScaleMinutes: number;
  readonly setUpScaleMinutes: number;
}

/** The scale k1 pbar, k2 sbar. Where nothing needs setting up, set-ups weigh nothing. */
export const atcsScale = ({
  k1,
  k2,
  meanProcessMinutes,
  meanSetUpMinutes,
}: {
  readonly k1: number;
  readonly k2: number;
  readonly meanProcessMinutes: number;
  readonly meanSetUpMinutes: number;
}): AtcsScale => ({
  dueScaleMinutes: k1 * meanProcessMinutes || Number.POSITIVE_INFINITY,
  setUpScaleMinutes: k2 * meanSetUpMinutes || Number.POSITIVE_INFINITY,
});

/**
 * Apparent tardiness cost with set-ups: how pressing a lot is, per minute; the machine takes the largest.
 * I = (w/p) exp(-max(d - p - t, 0)/(k1 pbar)) exp(-s/(k2 sbar)). Lee, Bhaskaran & Pinedo 1997, IIE
 * Transactions 29:45-52 (formula from memory).
 */
export const atcsIndex = (input: AtcsInput, scale: AtcsScale): number => Math.exp(logAtcsIndex(input, scale));

/** The index's natural logarithm: it ranks alike, costs no exponential, and cannot sink to zero for far due dates. */
export function logAtcsIndex(input: AtcsInput, scale: AtcsScale): number {
  const slack = Math.max(input.dueMinute - input.processMinutes - input.nowMinute, 0);
  return (
    Math.log(input.weight / input.processMinutes) -
    slack / scale.dueScaleMinutes -
    input.setUpMinutes / scale.setUpScaleMinutes
  );
}
