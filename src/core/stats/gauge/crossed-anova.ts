import { compensatedSum } from '../../numeric/index.js';
import { fRatio } from '../distributions/f-ratio.js';
import { meanOf, squaresAboutMean } from '../moments.js';
import type { CrossedStudy } from './crossed-study.js';

/** A line of the table: sum of squares, degrees of freedom, mean square. */
export interface Squares {
  readonly sum: number;
  readonly degrees: number;
  readonly mean: number;
}

export interface CrossedAnova {
  readonly part: Squares;
  readonly person: Squares;
  readonly interaction: Squares;
  readonly repeat: Squares;
  /** F of the interaction against the repeats, and the chance of as much where there is none. */
  readonly interactionF: number;
  readonly interactionP: number;
}

/**
 * Analysis of variance of parts crossed with persons, both drawn at random (AIAG, Measurement systems analysis, 4th ed.
 * 2010, III B): sums of squares of means about means, in the square of the readings' unit.
 */
export function crossedAnova({ parts, persons, trials, cells }: CrossedStudy): CrossedAnova {
  const [p, o, r] = [parts.length, persons.length, trials];
  const cellMeans = cells.map((row) => row.map(meanOf));
  const partMeans = cellMeans.map(meanOf);
  const personMeans = persons.map((_, person) => meanOf(cellMeans.map((row) => row[person]!)));
  const grand = meanOf(partMeans);
  const crossed = cellMeans.flatMap((row, i) =>
    row.map((mean, j) => (mean - partMeans[i]! - personMeans[j]! + grand) ** 2),
  );
  const part = squares(o * r * squaresAboutMean(partMeans), p - 1);
  const person = squares(p * r * squaresAboutMean(personMeans), o - 1);
  const interaction = squares(r * compensatedSum(crossed), (p - 1) * (o - 1));
  const repeat = squares(compensatedSum(cells.flat().map(squaresAboutMean)), p * o * (r - 1));
  const interactionF = interaction.mean / repeat.mean;
  return {
    part,
    person,
    interaction,
    repeat,
    interactionF,
    interactionP: fRatio(interaction.degrees, repeat.degrees).above(interactionF),
  };
}

export const squares = (sum: number, degrees: number): Squares => ({ sum, degrees, mean: sum / degrees });
