import type { SeatModel } from '../../core/string/index.js';

/** The seat model with its machines called otherwise: a file and the core go by names, records by ids. Families of a machine that is not known are left out. */
export function seatByMachine(seat: SeatModel, nameOf: (machineId: string) => string | undefined): SeatModel {
  if (!seat.families) return seat;
  return {
    ...seat,
    families: seat.families.flatMap((family) => {
      if (family.machineId === undefined) return [family];
      const machineId = nameOf(family.machineId);
      return machineId === undefined ? [] : [{ ...family, machineId }];
    }),
  };
}
