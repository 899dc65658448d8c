/** A figure that goes into a sentence: one decimal, and none where it would be a nought. */
export const readableFact = (figure: number): number => Math.round(figure * 10) / 10;
