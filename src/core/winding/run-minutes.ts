/**
 * Minutes that a machine needs for `strings` strings, set-up left out: whole cycles, each giving as many
 * strings as the machine has positions.
 */
export const runMinutes = (
  cycle: { readonly cycleSeconds: number; readonly positions: 1 | 2 },
  strings: number,
): number => (Math.ceil(strings / cycle.positions) * cycle.cycleSeconds) / 60;
