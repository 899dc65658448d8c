import type { Engine } from './engine.js';
import type { Migration } from './migrations/migration.js';
import { StoreUnavailable } from './store-faults.js';
import type { Sql } from './tables.js';

/**
 * Brings a database to the form that this program knows, a step at a time, each in its own transaction. A database
 * that is newer than the program is refused and left as it is: the program would not know what it must not break.
 */
export async function migrate(engine: Engine, migrations: readonly Migration[]): Promise<void> {
  const known = migrations.at(-1)?.number ?? 0;
  // Looked at first without the writers' lock: most times there is nothing to do.
  const standing = await engine.read((trx) => standingNumber(trx, engine));
  refuseNewer(standing, known);
  if (standing === known) return;
  for (const migration of migrations)
    await engine.write(async (trx) => {
      const now = await standingNumber(trx, engine);
      refuseNewer(now, known);
      // Another process may have been quicker.
      if (now >= migration.number) return;
      await migration.up(trx as unknown as Parameters<Migration['up']>[0], engine.dialect);
      await note(trx, engine, migration);
    });
}

function refuseNewer(standing: number, known: number): void {
  if (standing > known)
    throw new StoreUnavailable(
      'store.newer',
      `the database is at version ${standing}, this program knows up to ${known}`,
    );
}

async function standingNumber(trx: Sql, { dialect }: Engine): Promise<number> {
  const tables = await dialect.tableNames.execute(trx);
  if (!tables.rows.some(({ name }) => name === 'migrations')) return 0;
  const row = await trx
    .selectFrom('migrations')
    .select('number')
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row?.number ?? 0;
}

async function note(trx: Sql, { dialect }: Engine, { number, name }: Migration): Promise<void> {
  const { text, whole, tableEnd } = dialect;
  await trx.schema
    .createTable('migrations')
    .ifNotExists()
    .addColumn('number', whole, (column) => column.primaryKey().notNull())
    .addColumn('name', text, (column) => column.notNull())
    .addColumn('applied_at', text, (column) => column.notNull())
    .modifyEnd(tableEnd)
    .execute();
  await trx.insertInto('migrations').values({ number, name, applied_at: new Date().toISOString() }).execute();
}
