import type { Chance } from '../../src/core/foundation/index.js';

/**
 * Ids of the form UUIDv7 (RFC 9562, 5.7) whose time is the moment told and whose chance is seeded: the same seed
 * gives the same ids. Those of one moment sort in the order in which they were made.
 */
export function seededIds(chance: Chance, momentMs: () => number): () => string {
  let made = 0;
  return () => {
    const time = hex(momentMs(), 12);
    const count = hex(made++ % 0x1000, 3);
    const variant = hex(0x8000 + chance.whole(0, 0x3fff), 4);
    const rest = hex(chance.whole(0, 0xffffff), 6) + hex(chance.whole(0, 0xffffff), 6);
    return `${time.slice(0, 8)}-${time.slice(8)}-7${count}-${variant}-${rest}`;
  };
}

const hex = (value: number, digits: number): string => value.toString(16).padStart(digits, '0');
