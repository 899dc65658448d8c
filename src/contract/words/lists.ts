/** `a`, `a and b`, `a, b and c`. */
export const listInWords = (items: readonly string[]): string =>
  items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;

/** `1 set`, `3 sets`. */
export const countInWords = (count: number, thing: string): string =>
  `${count} ${thing}${count === 1 ? '' : 's'}`;
