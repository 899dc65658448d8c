import type { Alloy } from './alloy.js';
import { printed, recalled, spread } from './figure.js';

/** Filaments: the treble strings and the multifilament cores of classical guitars. */
export const POLYMERS = {
  nylon: {
    id: 'nylon',
    name: 'nylon',
    designation: 'polyamide 6 or 66',
    densityKgPerM3: printed(1130, ['ashby-polyamides'], {
      u: spread(1120, 1140),
      note: 'Middle of 1120 to 1140.',
    }),
    youngsModulusPa: printed(2.9e9, ['ashby-polyamides', 'polyamide-sheet'], {
      u: spread(1.5e9, 3.2e9),
      note: 'Middle of 2.6 to 3.2 GPa, bulk and dry; 1.5 with 2.5 % moisture. Drawn filament differs: measure.',
    }),
    expansionPerK: printed(146.5e-6, ['ashby-polyamides'], {
      u: spread(144e-6, 149e-6),
      note: 'Middle of 144e-6 to 149e-6, bulk.',
    }),
    magnetic: false,
    containsNickel: false,
    constituents: [],
    tempers: [
      {
        temper: 'as moulded',
        form: 'bulk',
        minimumPa: 90e6,
        maximumPa: 165e6,
        standing: 'printed',
        sources: ['ashby-polyamides'],
      },
    ],
  },
  pvdf: {
    id: 'pvdf',
    name: 'PVDF',
    designation: 'polyvinylidene fluoride filament',
    densityKgPerM3: recalled(1775, { u: spread(1760, 1790), note: 'Middle of 1760 to 1790.' }),
    youngsModulusPa: recalled(3.5e9, {
      u: spread(2e9, 5e9),
      note: 'Middle of 2 to 5 GPa for drawn filament.',
    }),
    expansionPerK: recalled(110e-6, { u: spread(80e-6, 140e-6), note: 'Middle of 80e-6 to 140e-6.' }),
    magnetic: false,
    containsNickel: false,
    constituents: [],
    tempers: [],
  },
} as const satisfies Partial<Record<Alloy['id'], Alloy>>;
