import type { GaugeThou } from './recipe.js';

/**
 * Core size over finished diameter that we aim at where the shop states no target of its own. Pure number.
 *
 * `0.2 + 8.8 / gauge`, at most 0.8: a 26 gets a 14 core, a 36 a 16, a 46 an 18, so the core grows by one for
 * every five of gauge. Our own default, no source: no published optimum is known to us. The line was laid
 * through core sizes for which core-only stiffness reproduces inharmonicities measured on guitars.
 */
export const usualCoreRatio = (gaugeThou: GaugeThou): number => Math.min(0.8, 0.2 + 8.8 / gaugeThou);

/** Outside these core ratios we do not propose a recipe: a core that thin whips and breaks, one that thick is hardly wound. Our own limits. */
export const SANE_CORE_RATIO = { least: 0.18, most: 0.85 } as const;

/** From this gauge on two layers of wrap are tried unasked: one thick wrap would be stiffer than the core. Our own limit. */
export const TWO_LAYERS_FROM_THOU = 60;

/** Inner over outer wrap wire in a string of two layers: the outer is the thicker one, within reason. Our own limits. */
export const SANE_INNER_SHARE = { least: 1 / 3, most: 1 } as const;
