/** Orders texts by code unit, not by a locale: the same shop gives the same answer on every machine. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
