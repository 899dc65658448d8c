import type { StringMaterial } from '../src/core/recipes/index.js';
import type { Instrument, StringSet, StringSpec } from '../src/core/sets/index.js';
import { metresFromInches } from '../src/core/units/index.js';

export const STANDARD_LENGTH_M = 1.0;
export const LONG_LENGTH_M = 1.25;
const THICKEST_PLAIN_THOU = 19;

/** The invented workshop's stock sets: treble first, gauges in thou. A `w` marks a wound string thin enough to be plain. */
const SETS: readonly (readonly [name: string, material: StringMaterial, gauges: string, lengthM?: number])[] =
  [
    ['Meadow six, 9', 'nickel-plated-steel', '9 11 16 24 32 42'],
    ['Meadow six, 9½', 'nickel-plated-steel', '9.5 12 16 24 33 44'],
    ['Meadow six, 10', 'nickel-plated-steel', '10 13 17 26 36 46'],
    ['Meadow six, 10 and deep', 'nickel-plated-steel', '10 13 17 30 42 54'],
    ['Meadow six, 11', 'nickel-plated-steel', '11 14 18 28 38 49'],
    ['Kiln six, 10', 'pure-nickel', '10 13 17 26 36 46'],
    ['Kiln six, 11 wound third', 'pure-nickel', '11 14 20w 28 38 50'],
    ['Kiln six, 12 wound third', 'pure-nickel', '12 16 22w 32 42 53'],
    ['Hazel bronze, 11', 'phosphor-bronze', '11 15 22w 32 42 52'],
    ['Hazel bronze, 12', 'phosphor-bronze', '12 16 24w 32 42 53'],
    ['Hazel bronze, 13', 'phosphor-bronze', '13 17 26 35 45 56'],
    ['Straw bronze, 12', 'bronze-80-20', '12 16 24w 32 42 54'],
    ['Straw bronze, 11', 'bronze-80-20', '11 15 22w 32 42 52'],
    ['Slate seven, 10', 'nickel-plated-steel', '10 13 17 26 36 46 59'],
    ['Slate seven, 9½', 'nickel-plated-steel', '9.5 13 17 26 36 46 62'],
    ['Slate eight, 9½', 'nickel-plated-steel', '9.5 13 17 26 36 46 60 74', LONG_LENGTH_M],
    ['Slate eight, 10', 'nickel-plated-steel', '10 13 18 28 38 49 64 80', LONG_LENGTH_M],
    ['Orchard twelve', 'phosphor-bronze', '10 10 14 14 9 23w 12 30 18 39 27 48'],
    ['Orchard twelve, plated', 'nickel-plated-steel', '10 10 13 13 8 20w 11 28 16 36 24 46'],
    ['Tarn baritone, 13', 'nickel-plated-steel', '13 17 26 36 46 62', LONG_LENGTH_M],
    ['Tarn baritone, 14', 'nickel-plated-steel', '14 18 28 38 50 66', LONG_LENGTH_M],
    ['Cellar bass four', 'nickel-plated-steel', '45 65 80 105', LONG_LENGTH_M],
    ['Cellar bass five', 'nickel-plated-steel', '45 65 80 105 130', LONG_LENGTH_M],
  ];

export const demoSets = (): readonly StringSet[] =>
  SETS.map(([name, material, gauges, lengthM]) => ({
    id: name
      .toLowerCase()
      .replace(/[^a-z0-9½]+/g, '-')
      .replace('½', '-half'),
    name,
    version: 1,
    strings: gauges.split(' ').map((gauge) => demoString(gauge, material, lengthM ?? STANDARD_LENGTH_M)),
  }));

function demoString(text: string, material: StringMaterial, lengthM: number): StringSpec {
  const gaugeThou = Number.parseFloat(text);
  const wound = text.endsWith('w') || gaugeThou > THICKEST_PLAIN_THOU;
  return {
    gaugeThou,
    kind: wound ? 'wound' : 'plain',
    material: wound ? material : 'plain-steel',
    end: 'ball',
    lengthM,
  };
}

const six = (name: string, inches: number, count = 6): Instrument => ({
  name,
  scaleLengthsM: Array.from({ length: count }, () => metresFromInches(inches)),
});

/** Instruments that orders may call by name: common scale lengths in plain words. */
export const demoInstruments = (): readonly Instrument[] => [
  six('electric 25.5', 25.5),
  six('electric 24.75', 24.75),
  six('acoustic 25.4', 25.4),
  six('baritone 27', 27),
  six('baritone 28.5', 28.5),
  six('seven-string 25.5', 25.5, 7),
  six('eight-string 27', 27, 8),
  six('twelve-string 25.5', 25.5, 12),
  six('bass 34', 34, 4),
];
