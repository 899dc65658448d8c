import { byText } from '../../foundation/index.js';
import type { Sample } from './sample.js';
import { UNKNOWNS } from './seat-unknowns.js';

/** Where each unknown stands in one long list: those that the shop has in common, then families, then machines. */
export interface Layout {
  readonly families: readonly string[];
  readonly machines: readonly string[];
  readonly size: number;
  /** Where the unknowns of a family begin; undefined for one that nothing was measured of. */
  readonly familyAt: (key: string) => number | undefined;
  readonly machineAt: (machineId: string) => number | undefined;
}

/** The layout for all families and machines that were measured. */
export function layoutOf(samples: readonly Sample[]): Layout {
  const seenFamilies = new Set<string>();
  const seenMachines = new Set<string>();
  for (const { family, familyKey, machineId } of samples) {
    if (!family) continue;
    seenFamilies.add(familyKey);
    seenMachines.add(machineId);
  }
  const families = [...seenFamilies].sort(byText);
  const machines = [...seenMachines].sort(byText);
  const familyPlaces = new Map(families.map((key, at) => [key, UNKNOWNS * (1 + at)]));
  const machinePlaces = new Map(machines.map((id, at) => [id, UNKNOWNS * (1 + families.length + at)]));
  return {
    families,
    machines,
    size: UNKNOWNS * (1 + families.length + machines.length),
    familyAt: (key) => familyPlaces.get(key),
    machineAt: (machineId) => machinePlaces.get(machineId),
  };
}
