import type { ClimateReading } from './spoken-for.js';

/**
 * Fewer readings that draw the same picture: of each of so many equal parts of the time its driest, dampest, coldest and
 * warmest reading are kept, so that no peak is lost. In the order of time; all of them where they are few.
 */
export function thinOut<Reading extends ClimateReading>(
  readings: readonly Reading[],
  parts: number,
): readonly Reading[] {
  const first = readings[0];
  const last = readings.at(-1);
  if (!first || !last || readings.length <= 4 * parts) return readings;
  const width = (last.atMs - first.atMs + 1) / parts;
  const kept = new Map<number, Reading[]>();
  for (const reading of readings) {
    const part = Math.floor((reading.atMs - first.atMs) / width);
    const extremes = kept.get(part) ?? [reading, reading, reading, reading];
    const [driest, dampest, coldest, warmest] = extremes as [Reading, Reading, Reading, Reading];
    kept.set(part, [
      reading.relativeHumidity < driest.relativeHumidity ? reading : driest,
      reading.relativeHumidity > dampest.relativeHumidity ? reading : dampest,
      reading.temperatureC < coldest.temperatureC ? reading : coldest,
      reading.temperatureC > warmest.temperatureC ? reading : warmest,
    ]);
  }
  return [...new Set([...kept.values()].flat())].sort((a, b) => a.atMs - b.atMs);
}
