import { existsSync } from 'node:fs';
import { workshopFaultWords } from '../contract/index.js';
import { openStore, type Store, StoreUnavailable } from '../store/index.js';
import { Refusal } from './inputs.js';
import { storePlace } from './store-place.js';

/** Does something with a shop's records and closes them. A file that is not there is refused unless it may be made. */
export async function withStore<T>(
  typed: string,
  work: (store: Store) => Promise<T>,
  { mayMake = false }: { readonly mayMake?: boolean } = {},
): Promise<T> {
  const place = storePlace(typed);
  if (!mayMake && 'file' in place && !existsSync(place.file))
    throw new Refusal(`${place.file}: there is no such shop. Check the name given with --db.`);
  try {
    const store = await openStore(place);
    try {
      return await work(store);
    } finally {
      await store.close();
    }
  } catch (thrown) {
    throw thrown instanceof StoreUnavailable ? storeRefusal(typed, thrown) : thrown;
  }
}

function storeRefusal(typed: string, thrown: StoreUnavailable): Refusal {
  const { what, mend } = workshopFaultWords({ code: thrown.code, detail: thrown.detail });
  return new Refusal(`${withoutPassword(typed)}: ${what} ${mend}`);
}

/** An address may hold a password, which belongs on no screen. */
const withoutPassword = (typed: string): string => typed.replace(/\/\/([^:/@]+):[^@]*@/, '//$1:…@');
