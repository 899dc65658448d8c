import type { ReadingAnswer } from '../../contract/index.js';
import { grouped } from '../../core/foundation/index.js';
import { LEAST_SET_UPS, learnChanges } from '../../core/winding/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { byName } from '../shop/shop-parts.js';
import { setUpNames } from './machines-learned.js';
import { pastSetUps, type SetUpSeen } from './past-set-ups.js';

type SetUpsSeen = ReadingAnswer<'set-ups-learned'>;

/** What the shop's own set-ups teach of scrap and time, and its scrap by cause; nothing is written. */
export async function setUpsSeen(tx: ReadTransaction): Promise<SetUpsSeen> {
  const { records } = tx;
  const names = setUpNames({
    machines: await records.all('machine'),
    recipes: await records.all('recipe'),
    wire: byName<'wire'>(await records.all('wire')),
  });
  const setUps = await pastSetUps(tx, names);
  return {
    leastSetUps: LEAST_SET_UPS,
    kinds: learnChanges(setUps).map(({ scrapTimes: _, minutesTimes: __, ...told }) => told),
    scrap: scrapByCause(setUps),
  };
}

function scrapByCause(setUps: readonly SetUpSeen[]): SetUpsSeen['scrap'] {
  const lines = setUps.flatMap(({ machineId, kind, scrapByCause: causes }) =>
    causes.map((cause) => ({ machineId, kind, ...cause })),
  );
  const same = grouped(lines, ({ machineId, kind, reason }) => JSON.stringify([machineId, kind, reason]));
  return [...same.values()].map((alike) => {
    const { machineId, kind, reason } = alike[0]!;
    const strings = (of: typeof alike) => of.reduce((sum, { count }) => sum + count, 0);
    return {
      machineId,
      kind,
      reason,
      strings: strings(alike),
      inSetUp: strings(alike.filter(({ isInSetUp }) => isInSetUp)),
    };
  });
}
