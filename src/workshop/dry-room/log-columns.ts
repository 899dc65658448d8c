import { CLIMATE_COLUMNS, type ClimateColumn } from '../../contract/index.js';

export type LogColumns = Readonly<Partial<Record<ClimateColumn, string>>>;

/** Headings that loggers and people write, bare of case, spaces and signs. */
const HEADINGS: Readonly<Record<ClimateColumn, readonly string[]>> = {
  at: [
    'at',
    'datetime',
    'dateandtime',
    'timestamp',
    'when',
    'recorded',
    'recordedat',
    'moment',
    'datetimeutc',
  ],
  date: ['date', 'day'],
  time: ['time', 'clock', 'timeofday'],
  temperature: [
    ...['temperature', 'temp', 't', 'celsius', 'airtemperature', 'temperaturec', 'tempc'],
    ...['temperaturef', 'tempf', 'fahrenheit'],
  ],
  humidity: [
    'humidity',
    'rh',
    'relativehumidity',
    'relhumidity',
    'humidityrh',
    'relativehumidityrh',
    'rhpercent',
  ],
  room: ['room', 'place', 'location', 'where'],
};

/** What each heading of a log means: as a person says, else as it is usually meant. The first that claims a column has it. */
export function logColumns(headings: readonly string[], told: LogColumns = {}): LogColumns {
  const toldHeadings = new Set(Object.values(told));
  const columns: Partial<Record<ClimateColumn, string>> = { ...told };
  for (const heading of headings) {
    if (toldHeadings.has(heading)) continue;
    const column = usualMeaning(heading);
    if (column !== undefined && columns[column] === undefined) columns[column] = heading;
  }
  // A time without a date beside it is both in one, as many loggers write it.
  const { time, ...others } = columns;
  if (columns.at === undefined && columns.date === undefined && time !== undefined)
    return { ...others, at: time };
  return columns;
}

/** Columns that a log cannot do without and has not. */
export const missingColumns = ({
  at,
  date,
  time,
  temperature,
  humidity,
}: LogColumns): readonly ClimateColumn[] => [
  ...(at === undefined && (date === undefined || time === undefined) ? (['at'] as const) : []),
  ...(temperature === undefined ? (['temperature'] as const) : []),
  ...(humidity === undefined ? (['humidity'] as const) : []),
];

/** Loggers write their own name and number above the headings. */
const MOST_ABOVE = 40;

/** The text with whatever stands above the line of headings blanked out, so that lines keep their numbers. */
export function withoutHead(csv: string): string {
  const lines = csv.split(/\r\n|\n|\r/);
  const at = lines.slice(0, MOST_ABOVE).findIndex(looksLikeHeadings);
  return at > 0 ? lines.map((line, number) => (number < at ? '' : line)).join('\n') : csv;
}

const looksLikeHeadings = (line: string): boolean => {
  const meant = new Set(line.split(/[,;\t|]/).map(usualMeaning));
  return meant.has('humidity') || (meant.has('temperature') && (meant.has('at') || meant.has('time')));
};

export const isFahrenheit = (heading: string): boolean =>
  /°\s*F\b|\bF\)|fahrenheit|tempf|temperaturef/i.test(heading);

const usualMeaning = (heading: string): ClimateColumn | undefined =>
  CLIMATE_COLUMNS.find((column) => HEADINGS[column].includes(bare(heading)));

const bare = (heading: string): string =>
  heading
    .normalize('NFKC')
    .toLowerCase()
    .replace(/\(.*\)|\[.*\]|°\s*[cf]\b/g, '')
    .replace(/[^\p{L}\p{N}]/gu, '');
