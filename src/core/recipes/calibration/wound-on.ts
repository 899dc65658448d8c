import type { Sample } from './sample.js';

/** Readings by family and machine. */
export type WoundOn = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** How many readings each machine has of each family, and of all together under the empty key. */
export function woundOn(samples: readonly Sample[]): WoundOn {
  const families = new Map<string, Map<string, number>>();
  const count = (family: string, { machineId, strings }: Sample): void => {
    const machines = families.get(family) ?? new Map<string, number>();
    families.set(family, machines);
    machines.set(machineId, (machines.get(machineId) ?? 0) + strings.length);
  };
  for (const sample of samples) {
    if (!sample.family) continue;
    count(sample.familyKey, sample);
    count('', sample);
  }
  return families;
}
