import type { Alloy } from './alloy.js';
import { nickelPlatedDensityKgPerM3, STEEL_KG_PER_M3 } from './density-of-mixtures.js';
import { derived, printed, spread } from './figure.js';

/** Nickel by mass of nickel-plated wrap wire: widely repeated in the trade, confirmed nowhere. */
const USUAL_PLATING_SHARE = 0.08;
const HEAVIEST_PLATING_SHARE = 0.1;

/** Carbon steel, plated or not, and the two stainless steels. */
export const STEELS = {
  'music-wire': {
    id: 'music-wire',
    name: 'music wire',
    designation: 'patented cold-drawn carbon steel, ASTM A228 / EN 10270-1 / JIS G 3522',
    densityKgPerM3: printed(STEEL_KG_PER_M3, ['en-10270-1', 'music-wire-notes']),
    youngsModulusPa: printed(
      206e9,
      ['en-10270-1', 'spring-material-tables', 'materials-database', 'grimes-2014'],
      {
        u: spread(190e9, 207e9),
        note: 'Printed as 206 GPa and 30 Mpsi (207); u is the spread down to the 190 of a database. Guitar strings have been measured at 177.6 to 188.4 GPa.',
      },
    ),
    expansionPerK: printed(12e-6, ['materials-database'], {
      u: spread(11e-6, 12e-6),
      note: 'Other tables give 11 to 12.',
    }),
    magnetic: true,
    containsNickel: false,
    constituents: ['iron'],
    tempers: [],
  },
  'nickel-plated-steel': {
    id: 'nickel-plated-steel',
    name: 'nickel-plated steel',
    designation: 'low-carbon steel wire with a coat of nickel',
    densityKgPerM3: {
      value: nickelPlatedDensityKgPerM3(USUAL_PLATING_SHARE),
      u: spread(STEEL_KG_PER_M3, nickelPlatedDensityKgPerM3(HEAVIEST_PLATING_SHARE)),
      standing: 'memory',
      sources: ['recalled', 'en-10270-1', 'rezic-2009'],
      note: 'For 8 % nickel by mass, a share that no source confirms; u covers 0 to 10 %.',
    },
    youngsModulusPa: derived(206e9, ['en-10270-1', 'recalled'], {
      note: 'Taken as that of carbon steel: the nickel is a few per cent and nearly as stiff.',
    }),
    expansionPerK: derived(12e-6, ['materials-database', 'recalled'], {
      note: 'Taken as that of carbon steel.',
    }),
    magnetic: true,
    containsNickel: true,
    nickelMassShare: { least: 0, most: HEAVIEST_PLATING_SHARE, standing: 'memory', sources: ['recalled'] },
    constituents: ['iron', 'nickel'],
    tempers: [
      { temper: 'dead soft', form: 'bulk', minimumPa: 300e6, standing: 'memory', sources: ['recalled'] },
      {
        temper: 'annealed',
        form: 'wire',
        minimumPa: 350e6,
        maximumPa: 500e6,
        standing: 'printed',
        sources: ['low-carbon-wire-sheet'],
      },
      {
        temper: 'hard',
        form: 'wire',
        minimumPa: 550e6,
        maximumPa: 750e6,
        standing: 'printed',
        sources: ['low-carbon-wire-sheet'],
      },
    ],
  },
  'stainless-304': {
    id: 'stainless-304',
    name: 'stainless steel',
    designation: 'austenitic stainless steel 304/302, UNS S30400/S30200, EN 1.4301',
    densityKgPerM3: printed(7900, ['en-10088-1', 'stainless-304-wire-sheet'], {
      u: spread(7900, 8000),
      note: 'Mill sheets print 7920 to 8000.',
    }),
    youngsModulusPa: printed(193e9, ['spring-material-tables', 'stainless-304-wire-sheet', 'en-10088-1'], {
      u: spread(187.5e9, 200e9),
      note: '200 GPa annealed, 187.5 as cold-drawn wire, 193 in tables of spring wire.',
    }),
    expansionPerK: printed(16e-6, ['en-10088-1']),
    magnetic: false,
    containsNickel: true,
    nickelMassShare: {
      least: 0.08,
      most: 0.105,
      standing: 'printed',
      sources: ['stainless-304-wire-sheet'],
    },
    constituents: ['iron', 'chromium', 'nickel'],
    tempers: [
      { temper: 'annealed', form: 'bulk', minimumPa: 515e6, standing: 'printed', sources: ['astm-a213'] },
      {
        temper: 'spring',
        form: 'wire',
        minimumPa: 1300e6,
        maximumPa: 2200e6,
        standing: 'printed',
        sources: ['stainless-304-wire-sheet'],
      },
    ],
  },
  'stainless-430': {
    id: 'stainless-430',
    name: 'magnetic stainless steel',
    designation: 'ferritic stainless steel 430, UNS S43000, EN 1.4016',
    densityKgPerM3: printed(7700, ['en-10088-1', 'stainless-430-sheet'], {
      u: spread(7700, 7750),
      note: '7750 elsewhere.',
    }),
    youngsModulusPa: printed(220e9, ['en-10088-1', 'stainless-430-sheet'], {
      u: spread(200e9, 220e9),
      note: '200 GPa elsewhere.',
    }),
    expansionPerK: printed(10e-6, ['en-10088-1', 'stainless-430-sheet'], { u: spread(10e-6, 10.4e-6) }),
    magnetic: true,
    containsNickel: false,
    nickelMassShare: { least: 0, most: 0.0075, standing: 'printed', sources: ['stainless-430-sheet'] },
    constituents: ['iron', 'chromium'],
    tempers: [
      {
        temper: 'annealed',
        form: 'bulk',
        minimumPa: 450e6,
        standing: 'printed',
        sources: ['en-10088-1', 'stainless-430-sheet'],
      },
    ],
  },
} as const satisfies Partial<Record<Alloy['id'], Alloy>>;
