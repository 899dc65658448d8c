import { writeSync } from 'node:fs';
import { openStore, perform, type Store, type StorePlace } from '../../src/workshop/index.js';
import { CONSOLE } from '../tablets/console.js';
import { type Ground, idsOfRequest, requestOf, TABLETS } from './requests.js';

/** Where the numbers of what it writes begin. */
const FROM = 0x100;

/** What a writer is told. */
export interface Task {
  readonly place: StorePlace;
  readonly ground: Ground;
  readonly round: number;
}

/**
 * Works at a shop without end until somebody kills it, for some tablets at once. Each finished request is acknowledged
 * by a line, which has left this process before the next is asked: tablet, count and answer.
 */
process.once('message', (task: Task) => {
  work(task).catch((thrown) => {
    console.error(thrown);
    process.exit(1);
  });
});
process.once('disconnect', () => process.exit(1));
process.send?.('ready');

async function work(task: Task): Promise<void> {
  const store = await openStore(task.place);
  await Promise.all(Array.from({ length: TABLETS }, (_, tablet) => ask(store, task, tablet)));
}

async function ask(store: Store, { ground, round }: Task, tablet: number): Promise<void> {
  for (let count = 0; ; count++) {
    const { useCase, ...asked } = requestOf(ground, { round, tablet, count });
    const newId = idsOfRequest(asked.requestId, FROM);
    const done = await perform(store, useCase, { ...CONSOLE, ...asked, newId });
    if (!done.ok) throw new Error(`${useCase.definition.name}: ${JSON.stringify(done.fault)}`);
    writeSync(1, `${tablet} ${count} ${JSON.stringify(done.value)}\n`);
  }
}
