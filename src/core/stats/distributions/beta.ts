import { betaTails, type Parts } from '../special/beta-tails.js';
import { placeOfTail, type TailShare } from '../special/quantile-search.js';
import type { Continuous } from './continuous.js';

/** The beta distribution on 0 to 1: below(x) = I_x(a, b) (NIST DLMF 8.17.2); a and b > 0. */
export function betaDistribution(a: number, b: number): Continuous {
  const tailsAt = (x: number) => betaTails(partsOf(x), a, b);
  return {
    below: (x) => tailsAt(x).below,
    above: (x) => tailsAt(x).above,
    quantile: (share) => betaParts({ below: share }, a, b).x,
    quantileAbove: (share) => betaParts({ above: share }, a, b).x,
  };
}

/** The value that cuts off a share, with what it leaves of 1: either may be the small one. */
export function betaParts(asked: TailShare, a: number, b: number): Parts {
  const tailsAt = (place: number) => betaTails(partsAt(place), a, b);
  return partsAt(placeOfTail(asked, { tailsAt, start: Math.log(a / b) }));
}

/** By the logarithm of the odds, a line without ends. */
const partsAt = (place: number): Parts => ({
  x: 1 / (1 + Math.exp(-place)),
  rest: 1 / (1 + Math.exp(place)),
});

function partsOf(x: number): Parts {
  const inside = Math.min(1, Math.max(0, x));
  return { x: inside, rest: 1 - inside };
}
