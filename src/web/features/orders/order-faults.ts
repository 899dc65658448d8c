import { orderFaultWords, type ProblemDetails } from '../../../contract/index.js';
import type { OrderFault } from '../../../core/orders/index.js';

export interface OrderFaultLike {
  readonly line: number;
  readonly what: string;
  readonly mend: string;
}

/** The faults of single lines that the shop lists with a refusal, in words. */
export function orderFaultsOf(problem: ProblemDetails): readonly OrderFaultLike[] {
  const { faults } = problem as { readonly faults?: readonly OrderFault[] };
  return (faults ?? []).map((fault) => ({ line: fault.line, ...orderFaultWords(fault) }));
}
