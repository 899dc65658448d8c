import { pascalsFromKsi } from '../units/index.js';
import type { Alloy } from './alloy.js';
import { NICKEL_KG_PER_M3 } from './density-of-mixtures.js';
import { printed, recalled, spread } from './figure.js';

/** Nickel by itself and the alloys that are mostly nickel. */
export const NICKEL_ALLOYS = {
  'pure-nickel': {
    id: 'pure-nickel',
    name: 'pure nickel',
    designation: 'commercially pure nickel, UNS N02200/N02201',
    densityKgPerM3: recalled(NICKEL_KG_PER_M3, { note: 'The element itself is recalled as 8908.' }),
    youngsModulusPa: recalled(205.5e9, { u: spread(204e9, 207e9), note: 'Middle of 204 to 207 GPa.' }),
    expansionPerK: printed(13.3e-6, ['nickel-200-sheet'], { note: 'From room temperature to about 100 °C.' }),
    magnetic: true,
    containsNickel: true,
    nickelMassShare: { least: 0.99, most: 1, standing: 'printed', sources: ['astm-b160'] },
    constituents: ['nickel'],
    tempers: [
      {
        temper: 'annealed',
        form: 'bulk',
        minimumPa: 345e6,
        standing: 'printed',
        sources: ['astm-b160'],
      },
      { temper: 'hard', form: 'wire', minimumPa: 550e6, standing: 'memory', sources: ['recalled'] },
    ],
  },
  'nickel-iron': {
    id: 'nickel-iron',
    name: 'nickel-iron',
    designation: 'nickel-iron of about equal parts (48 to 52 % nickel)',
    densityKgPerM3: recalled(8250, {
      u: spread(8200, 8300),
      note: 'Middle of 8200 to 8300; a sheet for 48 % nickel prints 8200. Weigh your own wire.',
    }),
    youngsModulusPa: recalled(157.5e9, { u: spread(150e9, 165e9), note: 'Middle of 150 to 165 GPa.' }),
    expansionPerK: printed(8.5e-6, ['nickel-iron-48-sheet'], {
      u: spread(8.3e-6, 9.3e-6),
      note: '48 % nickel, 20 to 100 °C; 8.3 to 9.3 up to 300 °C.',
    }),
    magnetic: true,
    containsNickel: true,
    nickelMassShare: { least: 0.48, most: 0.52, standing: 'memory', sources: ['recalled'] },
    constituents: ['iron', 'nickel'],
    tempers: [
      {
        temper: 'annealed',
        form: 'wire',
        minimumPa: 450e6,
        maximumPa: 550e6,
        standing: 'printed',
        sources: ['nickel-iron-48-sheet'],
      },
      {
        temper: 'hard',
        form: 'wire',
        minimumPa: 700e6,
        maximumPa: 900e6,
        standing: 'printed',
        sources: ['nickel-iron-48-sheet'],
      },
    ],
  },
  'nickel-copper': {
    id: 'nickel-copper',
    name: 'nickel-copper',
    designation: 'nickel-copper alloy 400, UNS N04400',
    densityKgPerM3: printed(8800, ['alloy-400-sheets']),
    youngsModulusPa: printed(179e9, ['alloy-400-sheets', 'spring-material-tables']),
    expansionPerK: printed(14.2e-6, ['alloy-400-sheets'], { note: '20 to 93 °C.' }),
    magnetic: false,
    containsNickel: true,
    nickelMassShare: { least: 0.63, most: 0.7, standing: 'printed', sources: ['alloy-400-sheets'] },
    constituents: ['nickel', 'copper'],
    tempers: [
      {
        temper: 'annealed',
        form: 'wire',
        minimumPa: pascalsFromKsi(70),
        maximumPa: pascalsFromKsi(95),
        standing: 'printed',
        sources: ['alloy-400-sheets'],
      },
      {
        temper: 'spring',
        form: 'wire',
        minimumPa: pascalsFromKsi(145),
        maximumPa: pascalsFromKsi(180),
        standing: 'printed',
        sources: ['alloy-400-sheets'],
      },
    ],
  },
} as const satisfies Partial<Record<Alloy['id'], Alloy>>;
