import { mkdtemp, rename, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { invariant, type Result } from '../core/foundation/index.js';
import {
  type DemoHistoryWish,
  letDemoPeopleIn,
  loadDemoHistory,
  openStore,
  slowHash,
  type WorkshopFault,
} from '../workshop/index.js';
import type { Log } from './request-log.js';
import { type OpenShop, serveShop } from './serve-shop.js';

export interface DemoToServe {
  readonly port: number;
  /** Where the invented shop is kept from one start to the next. Left out, it is made anew and thrown away at the end. */
  readonly file?: string;
  readonly history?: DemoHistoryWish;
  readonly log?: Log;
}

/** Opens the invented workshop, made with its history where its file is not there yet, to browsers on this machine. */
export async function serveDemo(wanted: DemoToServe): Promise<Result<OpenShop, WorkshopFault>> {
  const folder = wanted.file === undefined ? await mkdtemp(join(tmpdir(), 'tautwork-demo-')) : undefined;
  const file = wanted.file ?? join(folder!, 'shop.db');
  const forget = async () => {
    if (folder !== undefined) await rm(folder, { recursive: true, force: true });
  };
  if (!(await isThere(file))) await makeDemo(file, wanted.history);
  const { port, log } = wanted;
  const served = await serveShop({ place: { file }, port, ...(log ? { log } : {}), elsewhere: true });
  if (!served.ok) {
    await forget();
    return served;
  }
  const open = served.value;
  const close = async () => {
    await open.close();
    await forget();
  };
  return { ...served, value: { ...open, close } };
}

/** Under another name until it is whole: what was broken off must not be taken for the shop. */
async function makeDemo(file: string, history: DemoHistoryWish = {}): Promise<void> {
  const unfinished = `${file}.unfinished`;
  for (const end of ['', '-wal', '-shm']) await rm(`${unfinished}${end}`, { force: true });
  const store = await openStore({ file: unfinished });
  const told = await loadDemoHistory(store, history);
  await letDemoPeopleIn(store, slowHash());
  await store.close();
  invariant(!('code' in told), 'a file that was just made is empty');
  await rename(unfinished, file);
}

const isThere = (file: string): Promise<boolean> =>
  stat(file).then(
    () => true,
    () => false,
  );
