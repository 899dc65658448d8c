import type { AnyUseCase } from '../use-case.js';
import { openPacks } from './open-packs.js';
import { pickString } from './pick-string.js';
import { sealPack } from './seal-pack.js';
import { shipOrder } from './ship-order.js';
import { unpickString } from './unpick-string.js';
import { voidPack } from './void-pack.js';

/** From an order to the post. */
export const PACKING_USE_CASES: readonly AnyUseCase[] = [
  openPacks,
  pickString,
  unpickString,
  sealPack,
  voidPack,
  shipOrder,
];
