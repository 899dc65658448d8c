import { firstShop } from './0001-first-shop.js';
import { dialIn } from './0002-dial-in.js';
import { qualitySums } from './0005-quality-sums.js';
import type { Migration } from './migration.js';

/** Every step, in order; the last one's number is the form of database that this program knows. */
export const MIGRATIONS: readonly Migration[] = [firstShop, dialIn, qualitySums];
