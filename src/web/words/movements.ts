import { wordsIn } from './language.js';

/** The ledger of stock, as it is read. */
export const MOVEMENTS_WORDS = wordsIn({
  en: {
    title: 'Movements',
    none: 'Nothing was moved yet.',
    columns: { at: 'When', what: 'What', from: 'From', to: 'To', moved: 'Moved', by: 'By', reason: 'Why' },
    whats: {
      receive: 'received',
      use: 'used',
      make: 'made',
      scrap: 'scrapped',
      move: 'moved',
      pick: 'picked',
      unpick: 'put back',
      seal: 'sealed',
      ship: 'sent off',
      void: 'taken apart',
      count: 'counted',
      correct: 'put right',
    } as Readonly<Record<string, string>>,
    accounts: {
      supplier: 'supplier',
      customer: 'customer',
      made: 'winding',
      'wound-in': 'wound into strings',
      spool: 'spool',
      run: 'run',
      bin: 'bin',
      order: 'an order',
      pack: 'a pack',
    } as Readonly<Record<string, string>>,
    scrap: (reason: string) => `scrap: ${reason}`,
    difference: (of: string) => (of === 'weighing' ? 'weighing difference' : 'count difference'),
    strings: (count: string) => count,
  },
});
