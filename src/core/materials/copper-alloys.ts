import { metresFromInches, pascalsFromKsi } from '../units/index.js';
import type { Alloy, TemperBand } from './alloy.js';
import { mixtureDensityKgPerM3 } from './density-of-mixtures.js';
import { derived, printed, recalled, spread } from './figure.js';

/** Copper as the electrical standards count it, recalled; the ground of the silver-plated figure. */
const CONDUCTOR_COPPER_KG_PER_M3 = 8890;
const SILVER_KG_PER_M3 = 10_490;
const SILVER_PLATING_SHARE = 0.025;

/** Bronzes, brasses, copper and silver: wrap for acoustic and classical strings. */
export const COPPER_ALLOYS = {
  'phosphor-bronze': {
    id: 'phosphor-bronze',
    name: 'phosphor bronze',
    designation: 'phosphor bronze, 5 % tin, UNS C51000',
    densityKgPerM3: printed(8860, ['astm-b103']),
    youngsModulusPa: printed(110e9, ['astm-b103']),
    expansionPerK: printed(17.8e-6, ['astm-b103'], { note: '20 to 300 °C.' }),
    magnetic: false,
    containsNickel: false,
    constituents: ['copper', 'tin'],
    tempers: [
      b159('annealed', 43, 58),
      b159('quarter hard', 60, 76),
      b159('half hard', 80, 97),
      b159('three-quarter hard', 96, 115),
      b159('hard', 108, 128),
      b159Spring(145, undefined, 0.025),
      b159Spring(135, 0.025, 0.0625),
      b159Spring(130, 0.0625, 0.125),
      b159Spring(125, 0.125, 0.25),
    ],
  },
  'phosphor-bronze-8': {
    id: 'phosphor-bronze-8',
    name: 'phosphor bronze with 8 % tin',
    designation: 'phosphor bronze, 8 % tin, UNS C52100, EN CuSn8',
    densityKgPerM3: printed(8800, ['materials-database', 'recalled'], {
      u: spread(8750, 8850),
      note: 'Printed rounded, as 8.8 g/cm3; 8.80 recalled.',
    }),
    youngsModulusPa: printed(110e9, ['materials-database']),
    expansionPerK: printed(18e-6, ['materials-database'], { note: '18.2 recalled.' }),
    magnetic: false,
    containsNickel: false,
    constituents: ['copper', 'tin'],
    tempers: [
      {
        temper: 'any',
        form: 'bulk',
        minimumPa: 380e6,
        maximumPa: 800e6,
        standing: 'printed',
        sources: ['materials-database'],
      },
    ],
  },
  'bronze-80-20': {
    id: 'bronze-80-20',
    name: '80/20 bronze',
    designation: 'low brass, 80 % copper and 20 % zinc, UNS C24000, EN CuZn20',
    densityKgPerM3: printed(8660, ['astm-b36']),
    youngsModulusPa: printed(110e9, ['astm-b36']),
    expansionPerK: printed(19.1e-6, ['astm-b36'], { note: '20 to 300 °C.' }),
    magnetic: false,
    containsNickel: false,
    constituents: ['copper', 'zinc'],
    tempers: [strip('annealed', 305, 370), strip('hard', 470, 530), strip('spring', 585, 640)],
  },
  'brass-70-30': {
    id: 'brass-70-30',
    name: '70/30 brass',
    designation: 'cartridge brass, 70 % copper and 30 % zinc, UNS C26000',
    densityKgPerM3: printed(8530, ['c26000-wire-sheet']),
    youngsModulusPa: printed(110e9, ['c26000-wire-sheet']),
    expansionPerK: printed(19.9e-6, ['c26000-wire-sheet'], { note: '20 to 200 °C.' }),
    magnetic: false,
    containsNickel: false,
    constituents: ['copper', 'zinc'],
    tempers: [
      brassWire('annealed', 330, 372),
      brassWire('quarter hard', 425, 530),
      brassWire('half hard', 545, 650),
      brassWire('hard', 700, 810),
      brassWire('spring', 830),
    ],
  },
  'aluminium-bronze': {
    id: 'aluminium-bronze',
    name: 'aluminium bronze',
    designation: 'aluminium bronze, 8 % aluminium, UNS C61000',
    densityKgPerM3: recalled(7780, {
      note: 'A database prints 8500, which cannot be right for 8 % aluminium.',
    }),
    youngsModulusPa: printed(110e9, ['materials-database'], {
      u: spread(110e9, 117e9),
      note: '117 GPa recalled.',
    }),
    expansionPerK: printed(18e-6, ['materials-database']),
    magnetic: false,
    containsNickel: false,
    constituents: ['copper', 'aluminium'],
    tempers: [
      {
        temper: 'soft to half hard',
        form: 'bulk',
        minimumPa: 390e6,
        maximumPa: 460e6,
        standing: 'printed',
        sources: ['materials-database'],
      },
    ],
  },
  copper: {
    id: 'copper',
    name: 'copper',
    designation: 'copper wire',
    densityKgPerM3: printed(8930, ['solid-properties-notes'], {
      u: spread(CONDUCTOR_COPPER_KG_PER_M3, 8930),
      note: 'The electrical standards count 8890 (recalled).',
    }),
    youngsModulusPa: printed(117e9, ['solid-properties-notes']),
    expansionPerK: printed(17e-6, ['solid-properties-notes']),
    magnetic: false,
    containsNickel: false,
    constituents: ['copper'],
    tempers: [recalledWire('annealed', 220), recalledWire('hard', 400)],
  },
  'silver-plated-copper': {
    id: 'silver-plated-copper',
    name: 'silver-plated copper',
    designation: 'copper wire with a coat of silver, 2.5 % by mass',
    densityKgPerM3: {
      value: mixtureDensityKgPerM3(SILVER_PLATING_SHARE, SILVER_KG_PER_M3, CONDUCTOR_COPPER_KG_PER_M3),
      u: spread(CONDUCTOR_COPPER_KG_PER_M3, 8930),
      standing: 'memory',
      sources: ['recalled'],
      note: 'From silver at 10490 on copper at 8890 and a share of 2.5 %, all recalled.',
    },
    youngsModulusPa: derived(117e9, ['solid-properties-notes'], { note: 'Taken as that of copper.' }),
    expansionPerK: derived(17e-6, ['solid-properties-notes'], { note: 'Taken as that of copper.' }),
    magnetic: false,
    containsNickel: false,
    constituents: ['copper', 'silver'],
    tempers: [recalledWire('annealed', 220), recalledWire('hard', 400)],
  },
  silver: {
    id: 'silver',
    name: 'silver',
    designation: 'fine silver wire',
    densityKgPerM3: recalled(SILVER_KG_PER_M3),
    youngsModulusPa: recalled(83e9),
    expansionPerK: recalled(19e-6),
    magnetic: false,
    containsNickel: false,
    constituents: ['silver'],
    tempers: [recalledWire('annealed', 140)],
  },
} as const satisfies Partial<Record<Alloy['id'], Alloy>>;

function b159(temper: string, leastKsi: number, mostKsi: number): TemperBand {
  return {
    temper,
    form: 'wire',
    minimumPa: pascalsFromKsi(leastKsi),
    maximumPa: pascalsFromKsi(mostKsi),
    standing: 'printed',
    sources: ['astm-b159'],
  };
}

function b159Spring(leastKsi: number, aboveInches: number | undefined, upToInches: number): TemperBand {
  return {
    temper: 'spring',
    form: 'wire',
    minimumPa: pascalsFromKsi(leastKsi),
    ...(aboveInches === undefined ? {} : { aboveDiameterM: metresFromInches(aboveInches) }),
    upToDiameterM: metresFromInches(upToInches),
    standing: 'printed',
    sources: ['astm-b159'],
  };
}

function strip(temper: string, leastMPa: number, mostMPa: number): TemperBand {
  return {
    temper,
    form: 'strip',
    minimumPa: leastMPa * 1e6,
    maximumPa: mostMPa * 1e6,
    standing: 'printed',
    sources: ['astm-b36'],
  };
}

function brassWire(temper: string, leastMPa: number, mostMPa?: number): TemperBand {
  return {
    temper,
    form: 'wire',
    minimumPa: leastMPa * 1e6,
    ...(mostMPa === undefined ? {} : { maximumPa: mostMPa * 1e6 }),
    standing: 'printed',
    sources: ['c26000-wire-sheet'],
  };
}

function recalledWire(temper: string, leastMPa: number): TemperBand {
  return { temper, form: 'wire', minimumPa: leastMPa * 1e6, standing: 'memory', sources: ['recalled'] };
}
