import type { Construction } from '../../../core/string/index.js';
import type { RoomReading, ShownAir } from '../dry-room/use-dry-room.js';
import type { DrawnString } from '../set/drawn-string.js';

/** A 26 on a hexagon of 13 thousandths, to be cut open. */
export const HEX_26: Construction = {
  kind: 'wound',
  core: { shape: 'hex', sizeM: 0.00033, alloy: 'music-wire', strengthTable: 'astm-a228' },
  layers: [{ wireDiameterM: 0.000165, alloy: 'nickel-plated-steel', gap: 0 }],
};

/** A fan from 648 mm to 686 mm, some strings off what was wished. */
export const FAN: readonly DrawnString[] = [
  {
    position: 1,
    note: 'E4',
    gauge: '10 plain',
    kind: 'plain',
    diameterM: 0.000254,
    speakingLengthM: 0.648,
    tensionN: 72,
    wishedTensionN: 72,
  },
  {
    position: 2,
    note: 'B3',
    gauge: '13 plain',
    kind: 'plain',
    diameterM: 0.00033,
    speakingLengthM: 0.656,
    tensionN: 69,
    wishedTensionN: 74,
  },
  {
    position: 3,
    note: 'G3',
    gauge: '17 plain',
    kind: 'plain',
    diameterM: 0.000432,
    speakingLengthM: 0.664,
    tensionN: 76,
    wishedTensionN: 75,
  },
  {
    position: 4,
    note: 'D3',
    gauge: '26 wound',
    kind: 'wound',
    diameterM: 0.00066,
    speakingLengthM: 0.671,
    tensionN: 84,
    wishedTensionN: 80,
  },
  {
    position: 5,
    note: 'A2',
    gauge: '36 wound',
    kind: 'wound',
    diameterM: 0.000914,
    speakingLengthM: 0.679,
    tensionN: 88,
    wishedTensionN: 84,
  },
  {
    position: 6,
    note: 'E2',
    gauge: '46 wound',
    kind: 'wound',
    diameterM: 0.001168,
    speakingLengthM: 0.686,
    tensionN: 81,
    wishedTensionN: 86,
  },
];

const HUMIDITY = [0.41, 0.42, 0.44, 0.47, 0.52, 0.55, 0.49, 0.45, 0.43, 0.42];

/** Ten readings, the oldest first; two of them too damp. */
const READINGS: readonly RoomReading[] = HUMIDITY.toReversed().map((relativeHumidity, at) => ({
  id: `${at}`,
  at: `2026-04-${String(11 + at).padStart(2, '0')}T07:30:00.000Z`,
  room: 'dry room',
  temperatureC: 20 + (at % 4),
  relativeHumidity,
  isOnTheWay: false,
}));

/** The air of ten days, two of them too damp and one that nobody read. */
export const AIR: ShownAir = {
  from: '2026-04-10T18:00:00.000Z',
  to: '2026-04-20T18:00:00.000Z',
  readings: READINGS,
  excursions: [{ from: '2026-04-14T19:30:00.000Z', to: '2026-04-16T19:30:00.000Z' }],
  gaps: [{ from: '2026-04-17T12:00:00.000Z', to: '2026-04-18T02:00:00.000Z' }],
};
