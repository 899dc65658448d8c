import type { StringEnd } from '../../sets/index.js';

/** What a bench's core-end machine can do: lay the wire round a ball or into a loop, and twist it shut. */
export interface EndMaking {
  readonly makes: StringEnd | 'both';
  /** Full turns that its counter can be set to. */
  readonly twists: Range;
  /** Short end that its cutter can leave behind the last turn. */
  readonly tailM: Range;
  /** Pieces that can be cut to length there. */
  readonly cutM: Range;
}

interface Range {
  readonly least: number;
  readonly most: number;
}

export const makesEnd = ({ makes }: EndMaking, end: StringEnd): boolean => makes === 'both' || makes === end;
