import { wordsIn } from './language.js';

/** Temperature and humidity where wire and strings lie. */
export const DRY_ROOM_WORDS = wordsIn({
  en: {
    title: 'Dry room',
    what: 'the readings',
    room: 'Room',
    roomHint: 'As it is called in the shop.',
    firstRoom: 'dry room',
    temperature: 'Temperature',
    temperatureHint: (least: string, most: string) => `°C. Held between ${least} and ${most} °C.`,
    humidity: 'Relative humidity',
    humidityHint: (most: string) => `%. Held at ${most} % or less.`,
    basis: {
      shop: 'These limits are the shop’s own.',
      practice: 'Common practice, no source; the shop has settled no limits of its own.',
    },
    enter: 'Write it down',
    label: (room: string, reading: string) => `Reading of ${room}: ${reading}`,
    reading: (temperature: string, humidity: string) => `${temperature} °C, ${humidity} %`,
    within: 'Within the limits',
    withinMore: (reading: string) => `${reading}. Wire and strings lie well.`,
    outside: 'Out of the limits',
    outsideMore: (faults: string) =>
      `${faults} See to dryer and doors, and read again. Keep wire in its bags meanwhile; wipe skin off steel.`,
    tooDamp: (most: string) => `Damper than ${most} %: steel rusts.`,
    tooCold: (least: string) => `Colder than ${least} °C: damp settles on wire that is brought in.`,
    tooWarm: (most: string) => `Warmer than ${most} °C.`,
    last: 'The last readings',
    none: 'No reading was written down yet.',
    when: 'When',
    standing: 'Stands',
    ok: 'within',
    off: 'out of limits',
    onTheWay: 'not yet with the shop',
    chart: (count: number, room: string) => `The last ${count} readings of ${room}`,
    chartSays: (lastOnes: string, limits: string) => `The last: ${lastOnes}. Limits: ${limits}.`,
    limits: (least: string, most: string, damp: string) => `${least} to ${most} °C, ${damp} % or less`,
    limit: 'limit',
    celsius: '°C',
    percent: '%',
  },
});
