/** What the shell is told. The handbook lists the same. */
export const EXIT = {
  /** All was done. */
  done: 0,
  /** Done, but some lines could not go on: they are listed. */
  someFaults: 1,
  /** Nothing was done: a file cannot be read, or what was typed is not understood. */
  refused: 2,
  /** The answer is that it cannot be made: no recipe, no set, no machine. */
  impossible: 3,
  /** A fault of the program itself. */
  broken: 70,
} as const;
