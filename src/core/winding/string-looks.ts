/** A reading of a diameter at a place of a string, turned so far. */
export interface DiameterReading {
  readonly valueM: number;
  readonly placeM: number;
  readonly rotationDeg: number;
}

/** Places are marked on a rule: closer than this they are the same. */
const SAME_PLACE_M = 0.0005;

/**
 * Readings of one string, in the order in which they were taken, as looks: each a mean diameter at every place, the
 * turns of a place taken together, m. A place that is read once more belongs to the next look, which counts once
 * every place of the first is read again.
 */
export function looksOf(readings: readonly DiameterReading[]): readonly (readonly number[])[] {
  const cells: { placeM: number; rotationDeg: number; readM: number[] }[] = [];
  for (const { placeM, rotationDeg, valueM } of readings) {
    const known = cells.find(
      (cell) => cell.rotationDeg === rotationDeg && Math.abs(cell.placeM - placeM) < SAME_PLACE_M,
    );
    if (known) known.readM.push(valueM);
    else cells.push({ placeM, rotationDeg, readM: [valueM] });
  }
  if (cells.length === 0) return [];
  const whole = Math.min(...cells.map(({ readM }) => readM.length));
  return Array.from({ length: whole }, (_, look) => {
    const places: { placeM: number; readM: number[] }[] = [];
    for (const { placeM, readM } of cells) {
      const known = places.find((place) => Math.abs(place.placeM - placeM) < SAME_PLACE_M);
      if (known) known.readM.push(readM[look]!);
      else places.push({ placeM, readM: [readM[look]!] });
    }
    return places
      .toSorted((one, other) => one.placeM - other.placeM)
      .map(({ readM }) => readM.reduce((sum, each) => sum + each, 0) / readM.length);
  });
}
