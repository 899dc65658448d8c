import { expect, it } from 'vitest';
import type { Movement } from './ledger.js';
import { replay } from './ledger-replay.js';
import { pickString, sealPack, shipPack } from './pack-movements.js';
import { makeStrings, receivePieces } from './string-movements.js';
import { receiveWire, takeWire, weighDifference } from './wire-movements.js';
import type { SpoolBook } from './wire-quantities.js';

it('the example of docs/model/ledger.md: from a spool to an envelope', () => {
  const done: Movement[] = [];
  const spool = { spoolId: '17', wireId: 'core 16', unitWeightKgPerM: 0.98646e-3 };
  const string = { stringKey: 'wound 46', lotId: '9' };
  const lies = (account: string) => replay(done).filter((row) => row.account === account);
  const book = (): SpoolBook => {
    const [mg, mm] = lies('spool/17').map(({ quantity }) => quantity);
    return { ...spool, mg: mg ?? 0, mm: mm ?? 0 };
  };

  done.push(receiveWire({ ...spool, mg: 5_000_000 }));
  expect(book()).toMatchObject({ mg: 5_000_000, mm: 5_068_629 });
  const scrap = [{ reason: 'gap in the wrap', mg: 2_959 }];
  done.push(takeWire({ spool: book(), runId: '3', woundMg: 142_050, scrap })!);
  expect(book()).toMatchObject({ mg: 4_854_991, mm: 4_921_629 });
  const gaps = [{ reason: 'gap in the wrap', count: 3 }];
  done.push(makeStrings({ string, runId: '3', binId: 'B4', good: 144, scrap: gaps })!);
  done.push(weighDifference({ spool: book(), foundMg: 4_853_000, reason: 'weighed after the run' })!);
  expect(book()).toMatchObject({ mg: 4_853_000, mm: 4_919_611 });
  done.push(receivePieces({ item: 'pack/envelope', binId: 'desk', count: 50 }));
  done.push(pickString({ string, binId: 'B4', orderId: '801', packId: '1' }));
  const envelope = { item: 'pack/envelope', binId: 'desk', count: 1 } as const;
  done.push(
    sealPack({ packId: '1', orderId: '801', setName: 'one string', strings: [string], consumed: [envelope] }),
  );
  done.push(shipPack({ packId: '1', holds: lies('pack/1') }));

  expect(
    replay(done).map(({ account, item, unit, quantity }) => `${account} ${item} ${quantity} ${unit}`),
  ).toEqual([
    'bin/B4 string/wound 46 143 pieces',
    'bin/desk pack/envelope 49 pieces',
    'count-difference/weighing wire/core 16 1991 mg',
    'count-difference/weighing wire/core 16 2018 mm',
    'customer pack/envelope 1 pieces',
    'customer set/one string 1 pieces',
    'customer string/wound 46 1 pieces',
    'made set/one string -1 pieces',
    'made string/wound 46 -147 pieces',
    'scrap/gap in the wrap string/wound 46 3 pieces',
    'scrap/gap in the wrap wire/core 16 2959 mg',
    'scrap/gap in the wrap wire/core 16 3000 mm',
    'spool/17 wire/core 16 4853000 mg',
    'spool/17 wire/core 16 4919611 mm',
    'supplier pack/envelope -50 pieces',
    'supplier wire/core 16 -5000000 mg',
    'supplier wire/core 16 -5068629 mm',
    'wound-in wire/core 16 142050 mg',
    'wound-in wire/core 16 144000 mm',
  ]);
});
