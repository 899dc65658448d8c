import type { GaugeThou } from '../recipes/index.js';

/** Plain or wound where a gauge stands with nothing beside it: plain up to the shop's thickest of that rule, wound above. */
export const wantedKind = (
  wanted: { readonly gaugeThou: GaugeThou; readonly kind?: 'plain' | 'wound' },
  shop: { readonly plainUpToThou: number },
): 'plain' | 'wound' => wanted.kind ?? (wanted.gaugeThou <= shop.plainUpToThou ? 'plain' : 'wound');
