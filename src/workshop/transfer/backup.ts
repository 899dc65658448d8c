import { createReadStream, createWriteStream, existsSync } from 'node:fs';
import { copyFile, mkdir, open, readdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import type { RestoreFault } from '../../contract/index.js';
import { fail, type Result, succeed } from '../../core/foundation/index.js';
import { openStore, type Store, type StorePlace } from '../../store/index.js';
import { exportShop, importShop } from './archive.js';
import { backupsToDrop, type DatedBackup, type KeepRule } from './keep-rule.js';

const NAME = /^tautwork-(\d{4})(\d{2})(\d{2})T(\d{2})(\d{2})(\d{2})Z\.(sqlite|shop\.gz)$/;

/**
 * Backs a living shop up into a folder and gives the file's path: a copy of the database from SQLite, an archive from
 * PostgreSQL. The file is whole, on the disk and readable before it gets its name.
 */
export async function backupShop(store: Store, folder: string, at: string): Promise<string> {
  await mkdir(folder, { recursive: true });
  const ending = store.engine === 'sqlite' ? 'sqlite' : 'shop.gz';
  const path = join(folder, `tautwork-${at.slice(0, 19).replace(/[-:]/g, '')}Z.${ending}`);
  const part = `${path}.part`;
  await rm(part, { force: true });
  try {
    if (store.engine === 'sqlite') await store.backupTo(part);
    else await exportShop(store, createWriteStream(part));
    await onDisk(part);
    await rename(part, path);
  } catch (thrown) {
    await rm(part, { force: true });
    throw thrown;
  }
  return path;
}

/** Deletes the backups of a folder that the rule lets go. Files of other names are not touched. */
export async function dropOldBackups(folder: string, rule: KeepRule): Promise<readonly string[]> {
  const dropped = backupsToDrop(await backupsIn(folder), rule);
  for (const { path } of dropped) await rm(path);
  return dropped.map(({ path }) => path);
}

/** The backups of a folder, oldest first. */
export async function backupsIn(folder: string): Promise<readonly DatedBackup[]> {
  const found = (await readdir(folder)).flatMap((name): DatedBackup[] => {
    const match = NAME.exec(name);
    if (!match) return [];
    const [, year, month, day, hour, minute, second] = match;
    return [{ path: join(folder, name), at: `${year}-${month}-${day}T${hour}:${minute}:${second}.000Z` }];
  });
  return found.sort((a, b) => (a.at < b.at ? -1 : 1));
}

export interface RestoreTask {
  readonly backup: string;
  readonly to: StorePlace;
  /** Puts what stands there aside under another name first; without it nothing is overwritten. */
  readonly overwrite: boolean;
  /** For the name of what is put aside. */
  readonly at: string;
}

/**
 * Makes a shop from a backup: a database file or an archive, into a file or a PostgreSQL database. The backup is looked
 * through first; a damaged one restores nothing. What stood in the file's place is kept beside it.
 */
export async function restoreShop(
  task: RestoreTask,
): Promise<Result<{ readonly keptAt?: string }, RestoreFault>> {
  const { backup, to, overwrite, at } = task;
  if (!existsSync(backup)) return fail({ code: 'restore.no-backup', path: backup });
  if ('file' in to && existsSync(to.file) && !overwrite)
    return fail({ code: 'restore.would-overwrite', path: to.file });
  return isArchive(backup) ? fromArchive(task) : fromDatabase(backup, to, at);
}

const isArchive = (path: string): boolean => path.endsWith('.gz');

/** Made beside the place and moved there when it is whole. */
async function fromArchive({
  backup,
  to,
  at,
}: RestoreTask): Promise<Result<{ readonly keptAt?: string }, RestoreFault>> {
  const place: StorePlace = 'file' in to ? { file: `${to.file}.part` } : to;
  if ('file' in place) await removeDatabase(place.file);
  const store = await openStore(place);
  let told: Awaited<ReturnType<typeof importShop>>;
  try {
    told = await importShop(store, createReadStream(backup));
  } finally {
    await store.close();
  }
  if (!told.ok) {
    if ('file' in place) await removeDatabase(place.file);
    return told;
  }
  return succeed('file' in to && 'file' in place ? await moveIn(place.file, to.file, at) : {});
}

async function fromDatabase(
  backup: string,
  to: StorePlace,
  at: string,
): Promise<Result<{ readonly keptAt?: string }, RestoreFault>> {
  const copy = 'file' in to ? `${to.file}.part` : `${backup}.restoring`;
  await removeDatabase(copy);
  await copyFile(backup, copy);
  const store = await openStore({ file: copy });
  try {
    const details = (await store.integrity()).map(({ check, detail }) => `${check}: ${detail}`);
    if (details.length > 0) return fail({ code: 'restore.damaged', details });
    if ('url' in to) return await copyAcross(store, to);
  } finally {
    await store.close();
    if ('url' in to) await removeDatabase(copy);
  }
  return succeed('file' in to ? await moveIn(copy, to.file, at) : {});
}

/** From one engine to another by way of the archive. */
async function copyAcross(
  from: Store,
  to: StorePlace,
): Promise<Result<{ readonly keptAt?: string }, RestoreFault>> {
  const between = new PassThrough();
  const store = await openStore(to);
  try {
    const [, told] = await Promise.all([exportShop(from, between), importShop(store, between)]);
    return told.ok ? succeed({}) : told;
  } finally {
    await store.close();
  }
}

async function moveIn(made: string, place: string, at: string): Promise<{ readonly keptAt?: string }> {
  await removeSideFiles(made);
  await onDisk(made);
  if (!existsSync(place)) {
    await rename(made, place);
    return {};
  }
  const keptAt = `${place}.before-${at.slice(0, 19).replace(/[-:]/g, '')}Z`;
  await rename(place, keptAt);
  await removeSideFiles(place);
  await rename(made, place);
  return { keptAt };
}

async function removeDatabase(file: string): Promise<void> {
  await rm(file, { force: true });
  await removeSideFiles(file);
}

const removeSideFiles = async (file: string): Promise<void> => {
  await rm(`${file}-wal`, { force: true });
  await rm(`${file}-shm`, { force: true });
};

/** Through the system's caches: a backup that a power cut can take away is none. */
async function onDisk(path: string): Promise<void> {
  const file = await open(path, 'r+');
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}
