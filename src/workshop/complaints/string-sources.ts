import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { readStringKey } from '../../core/sets/index.js';
import type { Traits } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';

type Lot = StoredRecord<BodyOf<'string-lot'>>;

/** Where the strings of a lot came from, as far as the records go. */
export interface StringSources {
  readonly lot: (lotId: string) => Lot | undefined;
  readonly traitsOf: (lotId: string) => Traits;
}

/** Machine, gauge, month of winding and lots of wire of every lot of strings. */
export async function stringSources({ records }: ReadTransaction): Promise<StringSources> {
  const byId = <Kept extends { readonly id: string }>(all: readonly Kept[]) =>
    new Map(all.map((record) => [record.id, record]));
  const lots = byId(await records.all('string-lot'));
  const runs = byId(await records.all('run'));
  const machines = byId(await records.all('machine'));
  const spools = byId(await records.all('spool'));
  const wires = byId(await records.all('wire'));
  const known = new Map<string, Traits>();
  const traits = ({ body: { runId, stringKey, spoolIds } }: Lot): Traits => {
    const run = runs.get(runId ?? '')?.body;
    const machine = machines.get(run?.machineId ?? '')?.body.name;
    const spec = readStringKey(stringKey);
    const wireLots = spoolIds.flatMap((spoolId) => {
      const spool = spools.get(spoolId)?.body;
      const wire = spool && wires.get(spool.wireId)?.body.name;
      return wire === undefined ? [] : [`${wire}: ${spool?.lot}`];
    });
    return {
      ...(machine === undefined ? {} : { machine }),
      ...(spec ? { gauge: `${spec.gaugeThou} ${spec.kind}` } : {}),
      ...(run?.closedAt === undefined ? {} : { made: run.closedAt.slice(0, 7) }),
      ...(wireLots.length > 0 ? { 'wire lot': wireLots } : {}),
    };
  };
  return {
    lot: (lotId) => lots.get(lotId),
    traitsOf: (lotId) => {
      const lot = lots.get(lotId);
      const own = known.get(lotId) ?? (lot ? traits(lot) : {});
      known.set(lotId, own);
      return own;
    },
  };
}
