import { metresFromThou } from '../src/core/units/index.js';
import type { Machine } from '../src/core/winding/index.js';

const thouRange = (least: number, most: number) => ({
  least: metresFromThou(least),
  most: metresFromThou(most),
});

const CHANGE = {
  changeMinutes: { base: 6, core: 7, wrap: 9, alloy: 4, length: 3 },
  changeScrap: { base: 2, core: 1, wrap: 3, alloy: 1 },
};

/** Old gearboxes want more coaxing. */
const OLD_CHANGE = {
  changeMinutes: { base: 12, core: 9, wrap: 14, alloy: 5, length: 6 },
  changeScrap: { base: 4, core: 2, wrap: 5, alloy: 2 },
};

const WINDER = { kind: 'winder', minutesPerDay: 450, hexCore: true, roundCore: true } as const;

/** Traverse per spindle turn at each dial setting, as if measured: nearly straight, with the wobble of worn teeth. */
function dialTable(
  first: number,
  last: number,
  thouAtFirst: number,
  thouPerStep: number,
  wobble: readonly number[],
) {
  return Array.from({ length: last - first + 1 }, (_, at) => ({
    dial: first + at,
    traversePerTurnM: metresFromThou(thouAtFirst + at * thouPerStep + (wobble[at % wobble.length] ?? 0)),
  }));
}

/** Machines of all four kinds of winding (servo or gear, one string or two at once), and the bench for plain strings. */
export const demoMachines: readonly Machine[] = [
  {
    ...WINDER,
    ...CHANGE,
    id: 'wren',
    name: 'Wren (servo)',
    drive: 'servo',
    positions: 1,
    longestStringM: 1.45,
    gaugesThou: { least: 18, most: 135 },
    loadSeconds: 14,
    unloadSeconds: 9,
    spindleRpm: { least: 300, most: 7000 },
    wireSpeedLimitMPerS: 9,
    freeSpanM: 0.42,
    coreSizeM: thouRange(9, 40),
    wrapDiameterM: thouRange(2.5, 34),
    maxLayers: 2,
    pitchStepM: 1e-6,
    pitchM: thouRange(2, 60),
  },
  {
    ...WINDER,
    ...CHANGE,
    id: 'twin-finch',
    name: 'Twin Finch (servo, two at once)',
    drive: 'servo',
    positions: 2,
    longestStringM: 1.15,
    gaugesThou: { least: 18, most: 62 },
    loadSeconds: 22,
    unloadSeconds: 14,
    spindleRpm: { least: 300, most: 6500 },
    wireSpeedLimitMPerS: 8,
    freeSpanM: 0.34,
    coreSizeM: thouRange(10, 24),
    wrapDiameterM: thouRange(3, 21),
    maxLayers: 1,
    pitchStepM: 2e-6,
    pitchM: thouRange(2.5, 40),
  },
  {
    ...WINDER,
    ...OLD_CHANGE,
    id: 'old-heron',
    name: 'Old Heron (gearbox)',
    drive: 'gear',
    positions: 1,
    longestStringM: 1.3,
    gaugesThou: { least: 20, most: 85 },
    loadSeconds: 18,
    unloadSeconds: 12,
    spindleRpm: { least: 200, most: 3600 },
    wireSpeedLimitMPerS: 6,
    freeSpanM: 0.5,
    coreSizeM: thouRange(11, 32),
    wrapDiameterM: thouRange(4, 30),
    maxLayers: 1,
    dialTable: dialTable(1, 60, 3.1, 0.47, [0, 0.03, -0.02, 0.05, -0.04]),
    dialStep: 0.25,
  },
  {
    ...WINDER,
    ...OLD_CHANGE,
    id: 'two-herons',
    name: 'Two Herons (gearbox, two at once)',
    drive: 'gear',
    positions: 2,
    longestStringM: 1.1,
    gaugesThou: { least: 20, most: 58 },
    loadSeconds: 26,
    unloadSeconds: 18,
    spindleRpm: { least: 200, most: 3200 },
    wireSpeedLimitMPerS: 5.5,
    freeSpanM: 0.48,
    coreSizeM: thouRange(12, 22),
    wrapDiameterM: thouRange(4, 18),
    maxLayers: 1,
    dialTable: dialTable(1, 48, 3.4, 0.36, [0, -0.02, 0.04, -0.03]),
    dialStep: 0.5,
  },
  {
    kind: 'bench',
    id: 'bench',
    name: 'Cutting bench',
    positions: 1,
    longestStringM: 1.5,
    gaugesThou: { least: 7, most: 30 },
    loadSeconds: 8,
    unloadSeconds: 4,
    minutesPerDay: 450,
    changeMinutes: { base: 2, core: 3, wrap: 0, alloy: 0, length: 2 },
    changeScrap: { base: 0, core: 1, wrap: 0, alloy: 0 },
    ends: {
      makes: 'both',
      twists: { least: 3, most: 14 },
      tailM: { least: 0, most: 0.01 },
      cutM: { least: 0.4, most: 1.6 },
    },
  },
];
