import { acceptance, type SinglePlan } from './single-plan.js';

export interface PlanCosts {
  readonly lot: number;
  /** To look at one string, and what a bad one costs that is passed on; in one currency, any unit. */
  readonly look: number;
  readonly escape: number;
  /** What shares of bad strings lots come with, and how often each; weights add up to 1. */
  readonly incoming: readonly { readonly share: number; readonly weight: number }[];
}

/** A plan and its mean cost per lot. Size 0 looks at none, the whole lot at all. */
export interface CostedPlan extends SinglePlan {
  readonly cost: number;
}

/**
 * The plan that costs least per lot on average, refused lots being sorted through: n look + P_a (N-n) p escape + (1-P_a)
 * (N-n) look, over the shares that come in. Bad strings found cost the same under any plan and are left out. Every sample
 * size and acceptance number is tried. If lots all come alike, none or all is best (W. E. Deming, Out of the crisis,
 * 1986, ch. 15: none where p < look/escape).
 */
export function cheapestPlan(costs: PlanCosts): CostedPlan {
  let best: CostedPlan = { size: 0, acceptUpTo: 0, cost: costOf({ size: 0, acceptUpTo: 0 }, costs) };
  for (let size = 1; size <= costs.lot; size++) {
    let before = Number.POSITIVE_INFINITY;
    for (let acceptUpTo = 0; acceptUpTo < size; acceptUpTo++) {
      const cost = costOf({ size, acceptUpTo }, costs);
      if (cost < best.cost) best = { size, acceptUpTo, cost };
      // More bad strings in the sample speak ever louder against the lot: past the best number cost only rises.
      if (cost > before) break;
      before = cost;
    }
  }
  return best;
}

function costOf(plan: SinglePlan, costs: PlanCosts): number {
  const { lot, look, incoming } = costs;
  const left = lot - plan.size;
  return incoming.reduce((sum, { share, weight }) => {
    const accepted = plan.size === 0 ? 1 : acceptance(plan, share, 'process');
    return (
      sum + weight * (plan.size * look + left * (accepted * share * costs.escape + (1 - accepted) * look))
    );
  }, 0);
}
