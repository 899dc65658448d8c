import { randomUUID } from 'node:crypto';
import type { BodyOf } from '../../src/contract/index.js';
import type {
  CautionReading,
  EndCheckRecord,
  JournalEntry,
  Measurement,
  NewEvent,
  Tally,
  Transaction,
} from '../../src/store/index.js';

/** A moment of the invented days in these tests. */
export const at = (minute: number): string => new Date(Date.UTC(2031, 2, 3, 8, minute)).toISOString();

export const binBody = (name: string): BodyOf<'bin'> => ({ name, walkOrder: 1, reorderLevel: 0 });

export const personBody = (name: string): BodyOf<'person'> => ({ name, roles: ['winder'], active: true });

const spec = { gaugeThou: 26, kind: 'wound', material: 'pure-nickel', end: 'ball', lengthM: 1 } as const;
const core = { sizeM: 0.000254, alloy: 'music-wire', strengthTable: 'astm-a228' } as const;

export const orderBody = (number: string, player = 'Ilse Varga'): BodyOf<'order'> => ({
  number,
  player,
  due: '2031-03-10',
  note: '',
  lines: [
    {
      lineNumber: 1,
      kind: 'stock',
      setName: 'Evenfall',
      quantity: 2,
      strings: [{ position: 1, spec, stringKey: 'w26', recipeId: randomUUID() }],
    },
  ],
});

/** A run with all that it refers to: wire, recipe, machine. */
export async function insertRun(tx: Transaction): Promise<string> {
  const mark = randomUUID();
  const wire = await tx.records.insert('wire', {
    id: randomUUID(),
    at: at(0),
    body: { name: `wire ${mark}`, use: 'core', shape: 'round', priceMinorPerKg: 900, ...core },
  });
  const recipe = await tx.records.insert('recipe', {
    id: randomUUID(),
    state: 'calibrated',
    at: at(0),
    body: {
      name: `recipe ${mark}`,
      gaugeThou: 10,
      material: 'plain-steel',
      construction: { kind: 'plain', wire: { ...core, shape: 'round' } },
      coreWireId: wire.id,
      wrapWireIds: [],
      note: '',
    },
  });
  const machine = await tx.records.insert('machine', {
    id: randomUUID(),
    at: at(0),
    body: {
      kind: 'bench',
      name: `bench ${mark}`,
      positions: 1,
      longestStringM: 2,
      gaugesThou: { least: 7, most: 24 },
      loadSeconds: 5,
      unloadSeconds: 5,
      minutesPerDay: 420,
      changeMinutes: { base: 1, core: 2, wrap: 0, alloy: 0, length: 1 },
      changeScrap: { base: 0, core: 1, wrap: 0, alloy: 0 },
    },
  });
  const run = await tx.records.insert('run', {
    id: randomUUID(),
    state: 'running',
    at: at(0),
    body: {
      name: 'R-1',
      recipeId: recipe.id,
      recipeVersion: 1,
      machineId: machine.id,
      spec,
      stringKey: 'w26',
      quantity: 40,
      spoolIds: [],
      goodCount: 0,
      scrapCount: 0,
      note: '',
    },
  });
  return run.id;
}

export const measurement = (runId: string, changes: Partial<Measurement> = {}): Measurement => ({
  id: randomUUID(),
  runId,
  trialStringId: null,
  quantity: 'diameter',
  value: 0.000_661_2,
  placeM: 0.3,
  rotationDeg: null,
  instrument: 'micrometer 2',
  at: at(5),
  by: 'person/a',
  ...changes,
});

export const tally = (runId: string, changes: Partial<Tally> = {}): Tally => ({
  id: randomUUID(),
  runId,
  lotId: null,
  station: 'winder',
  outcome: 'scrap',
  reason: 'loose tail',
  count: 2,
  at: at(1),
  by: 'person/a',
  ...changes,
});

/** Strings out of nowhere into a bin. */
export const movement = (binId: string) => ({
  id: randomUUID(),
  at: at(1),
  by: 'person/a',
  what: 'make',
  reason: '',
  ofKind: 'run',
  ofId: binId,
  entries: [
    { account: 'made', item: 'string/w26', lot: 'l', unit: 'pieces', quantity: -3 },
    { account: `bin/${binId}`, item: 'string/w26', lot: 'l', unit: 'pieces', quantity: 3 },
  ] as const,
});

export const event = (recordId: string): NewEvent => ({
  topic: 'bin',
  recordId,
  version: 1,
  useCase: 'save-bin',
  at: at(1),
});

export const journalEntry = (changes: Partial<JournalEntry> = {}): JournalEntry => ({
  id: randomUUID(),
  at: at(1),
  by: 'person/a',
  useCase: 'save-bin',
  input: { name: 'A-1' },
  touched: [],
  ...changes,
});

export const cautionReading = (
  machineId: string,
  personId: string,
  changes: Partial<CautionReading> = {},
): CautionReading => ({
  id: randomUUID(),
  machineId,
  personId,
  cautions: ['rotating-spindle', 'local-rules'],
  edition: 1,
  at: at(7),
  ...changes,
});
/** Two ends of a run: one with all that can be found, and one that takes its place with a pull alone. */
export async function endChecksOf(tx: Transaction, runId: string): Promise<readonly EndCheckRecord[]> {
  const run = (await tx.records.get('run', runId))!;
  const { machineId, recipeId } = run.body;
  const { coreWireId: wireId } = (await tx.records.get('recipe', recipeId))!.body;
  const of = { runId, machineId, wireId, spoolId: null, end: 'ball', gauge: 'Γ½', by: 'person/a' } as const;
  const first: EndCheckRecord = {
    ...of,
    id: randomUUID(),
    lengthM: 1.001,
    twists: 6.5,
    tailM: 0,
    seat: 'crooked',
    pull: { forceN: 0.1 + 0.2, came: 'at-twist' },
    leastBreakingN: 135.2,
    strengthFrom: 'standard',
    insteadOf: null,
    at: at(4),
  };
  const second: EndCheckRecord = {
    ...of,
    id: randomUUID(),
    pull: { forceN: 88, came: 'held' },
    leastBreakingN: null,
    strengthFrom: null,
    insteadOf: first.id,
    at: at(5),
  };
  return [first, second];
}
