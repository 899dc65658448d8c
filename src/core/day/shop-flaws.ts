import { machineFlaws } from './machine-flaws.js';
import { nameFlaws } from './name-flaws.js';
import { recipeFlaws } from './recipe-flaws.js';
import type { Shop } from './shop.js';
import type { ShopFlaw } from './shop-flaw.js';

/** Every flaw of a shop, found before it costs a day; empty where it is sound. */
export const shopFlaws = (shop: Shop): readonly ShopFlaw[] => [
  ...nameFlaws(shop),
  ...recipeFlaws(shop),
  ...machineFlaws(shop),
];
