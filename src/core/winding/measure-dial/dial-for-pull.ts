import { monotoneInterpolation } from '../../numeric/index.js';

/** A row of the table of a tension scale: what a number of it pulls, N. */
export interface PullRow {
  readonly dial: number;
  readonly pullN: number;
}

/** The number of a tension scale that gives a pull; undefined where its table does not reach it or cannot be read. */
export function dialForPull(rows: readonly PullRow[], pullN: number): number | undefined {
  return curveOf(rows)?.inverse(pullN);
}

/** The pull that a number of a tension scale gives, N; undefined outside its table. */
export function pullAtDial(rows: readonly PullRow[], dial: number): number | undefined {
  const curve = curveOf(rows);
  return curve && dial >= curve.leastX && dial <= curve.mostX ? curve(dial) : undefined;
}

/** Whether a table of pulls can be read off: numbers ascending, pulls all rising or all falling. */
export function isPullTableUsable(rows: readonly PullRow[]): boolean {
  const direction = Math.sign((rows[1]?.pullN ?? 0) - (rows[0]?.pullN ?? 0));
  return (
    rows.length >= 2 &&
    direction !== 0 &&
    rows
      .slice(1)
      .every((row, at) => row.dial > rows[at]!.dial && Math.sign(row.pullN - rows[at]!.pullN) === direction)
  );
}

const curveOf = (rows: readonly PullRow[]) =>
  isPullTableUsable(rows)
    ? monotoneInterpolation(
        rows.map(({ dial }) => dial),
        rows.map(({ pullN }) => pullN),
      )
    : undefined;
