/**
 * p values made good for being the smallest of many, in the order given: the chance that any of the questions without an
 * answer would have looked so clear. (m - i + 1) p_(i), none below the one before (S. Holm, Scand. J. Statist. 6 (1979)
 * 65). For few questions, each of which would be acted upon.
 */
export function holm(ps: readonly number[]): readonly number[] {
  const order = inOrder(ps);
  const adjusted: number[] = Array(ps.length);
  let least = 0;
  order.forEach((at, place) => {
    least = Math.max(least, Math.min(1, (ps.length - place) * ps[at]!));
    adjusted[at] = least;
  });
  return adjusted;
}

/**
 * The share of wrong ones to expect among all that are as clear as this or clearer: m p_(i)/i, none above the one after
 * (Y. Benjamini & Y. Hochberg, J. Roy. Statist. Soc. B 57 (1995) 289). For many questions of which some are followed up.
 */
export function benjaminiHochberg(ps: readonly number[]): readonly number[] {
  const order = inOrder(ps);
  const adjusted: number[] = Array(ps.length);
  let most = 1;
  for (let place = ps.length - 1; place >= 0; place--) {
    const at = order[place]!;
    most = Math.min(most, (ps.length * ps[at]!) / (place + 1));
    adjusted[at] = most;
  }
  return adjusted;
}

const inOrder = (ps: readonly number[]): readonly number[] =>
  ps.map((_, at) => at).sort((a, b) => ps[a]! - ps[b]!);
