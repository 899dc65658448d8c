/**
 * Speed at which the end of a loose tail flies round a turning spindle: v = 2 pi r n. Metres per second, for
 * a tail of `tailM` reaching straight out from the axis. Said beside the cautions, so that they are believed.
 */
export const tailSpeedMPerS = (tailM: number, spindleRpm: number): number =>
  2 * Math.PI * tailM * (spindleRpm / 60);
