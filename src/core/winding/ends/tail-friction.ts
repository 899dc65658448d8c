/**
 * Friction between two turns of wire, dry. From memory (0.1 to 0.2 for hard steel on hard steel), no source
 * read: the middle of it. Plating, oil and the set that the wire takes all change it.
 */
export const FRICTION_OF_WIRE = 0.15;

/**
 * Share of its pull that is left in a wire behind turns laid close about another: exp(-2 pi f n). The rope on
 * a post (L. Euler 1769, J. A. Eytelwein 1808). It looks on friction alone: what the wire holds by being bent
 * to shape comes on top.
 */
export const pullLeftBehind = (turns: number, friction = FRICTION_OF_WIRE): number =>
  Math.exp(-2 * Math.PI * friction * turns);

/** Fewest whole turns behind which no more than a share of the pull is left. */
export const turnsToLeave = (share: number, friction = FRICTION_OF_WIRE): number =>
  Math.ceil(-Math.log(share) / (2 * Math.PI * friction) - 1e-9);
