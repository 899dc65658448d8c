import type { CalendarDate } from '../../src/core/foundation/index.js';

/** What goes wrong in the invented year. Only the causes are here: what comes of them is for the records to show. */
export interface PlantedCauses {
  readonly wear: GearWear;
  readonly badLot: BadWireLot;
  readonly micrometer: LargeMicrometer;
}

/** Worn gears lay the wrap with less and less pull, so that it beds less deep and the string comes out thicker. */
export interface GearWear {
  readonly machine: string;
  readonly from: CalendarDate;
  readonly growthMPerDay: number;
}

/** A lot drawn through a worn die. Its certificate says nothing of it. */
export interface BadWireLot {
  readonly wire: string;
  readonly lot: string;
  readonly arrives: CalendarDate;
  readonly spools: number;
  readonly netKg: number;
  /** How far its mean diameter is off the nominal one, as a share of it. */
  readonly offShare: number;
  /** Standard deviation of the diameter along the wire, as a share of it. */
  readonly spreadShare: number;
}

/** A micrometer that was dropped, and reads too much ever after. */
export interface LargeMicrometer {
  readonly instrument: string;
  readonly from: CalendarDate;
  readonly readsLargeM: number;
}

/** The causes of the demo's year. The page beside this file tells of them; a test holds the two together. */
export const PLANTED_CAUSES: PlantedCauses = {
  wear: { machine: 'old-heron', from: '2026-03-02' as CalendarDate, growthMPerDay: 40e-9 },
  badLot: {
    wire: 'nickel-plated-steel 10',
    lot: 'wire lot 586',
    arrives: '2026-06-09' as CalendarDate,
    spools: 2,
    netKg: 1.2,
    offShare: -0.015,
    spreadShare: 0.012,
  },
  micrometer: { instrument: 'micrometer 2', from: '2026-10-05' as CalendarDate, readsLargeM: 5e-6 },
};
