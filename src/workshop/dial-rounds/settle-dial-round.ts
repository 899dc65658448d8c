import {
  adoptDialRound as adoptDefinition,
  type BodyOf,
  dropDialRound as dropDefinition,
  type StoredRecord,
  undoDialRound as undoDefinition,
} from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { DIAL_ROUND_LIFE } from '../../core/stock/index.js';
import {
  asDialReading,
  type DialValue,
  dialTableOf,
  measuredTable,
  withDialTable,
} from '../../core/winding/index.js';
import { needRecord, recordAsSeen, saveRecord, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { machineIsSound } from '../shop/shop-checks.js';
import { useCase, type Work } from '../use-case.js';

/** Sets the machine by what was measured, in somebody's name; the table before it is kept beside. */
export const adoptDialRound = useCase(adoptDefinition, async (work, input) => {
  const round = await recordAsSeen(work.tx, 'dial-round', input);
  const { machineId, quantity, dials, readings, readingError } = round.body;
  const machine = await needRecord(work.tx, 'machine', machineId);
  const before = dialTableOf(machine.body, quantity);
  const found = measuredTable(readings.flatMap((each) => asDialReading(each, readingError) ?? []));
  const read = new Set(readings.filter(({ isStruck }) => !isStruck).map(({ dial }) => dial));
  const missing = dials.filter((dial) => !read.has(dial));
  if (!before || !found || missing.length > 0) return fail({ code: 'dial-round.unfinished', missing });
  const after = found.table.map(({ dial, value }) => ({ dial, value: Number(value.toPrecision(6)) }));
  if (after.length < 2) return fail({ code: 'dial-round.all-alike' });
  const adopted = { at: work.now, by: work.actor.by, before: [...before], after };
  const body = { ...round.body, adopted };
  const settled = await stepRecord(work, 'dial-round', {
    record: round,
    life: DIAL_ROUND_LIFE,
    step: 'adopt',
    body,
  });
  return succeed({ round: settled, machine: await setBy(work, machine, quantity, after) });
});

/** Takes an adoption back, as long as nobody has changed the table since. */
export const undoDialRound = useCase(undoDefinition, async (work, input) => {
  const round = await recordAsSeen(work.tx, 'dial-round', input);
  const { adopted, ...body } = round.body;
  const { machineId, quantity } = body;
  const machine = await needRecord(work.tx, 'machine', machineId);
  const now = dialTableOf(machine.body, quantity);
  if (adopted && JSON.stringify(now) !== JSON.stringify(adopted.after))
    return fail({ code: 'dial-round.changed-since', machineName: machine.body.name });
  const settled = await stepRecord(work, 'dial-round', {
    record: round,
    life: DIAL_ROUND_LIFE,
    step: 'undo',
    body,
  });
  return succeed({ round: settled, machine: await setBy(work, machine, quantity, adopted?.before ?? []) });
});

/** Gives a round up; what was read stays on record. */
export const dropDialRound = useCase(dropDefinition, async (work, input) => {
  const round = await recordAsSeen(work.tx, 'dial-round', input);
  return succeed(
    await stepRecord(work, 'dial-round', { record: round, life: DIAL_ROUND_LIFE, step: 'drop' }),
  );
});

type MachineRecord = StoredRecord<BodyOf<'machine'>>;

async function setBy(
  work: Work,
  { id, version, body }: MachineRecord,
  quantity: BodyOf<'dial-round'>['quantity'],
  rows: readonly DialValue[],
): Promise<MachineRecord> {
  const saved = { id, expectedVersion: version, body: withDialTable(body, quantity, rows) };
  const flaw = await machineIsSound(work.tx, saved);
  if (flaw) refuse(flaw);
  return saveRecord(work, 'machine', saved);
}
