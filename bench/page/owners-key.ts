import { consoleSignInLink, newId, openStore, shopClock } from '../../src/workshop/index.js';

/** The cookie of the owner of a shop that is being served, signed in by a link from the console. */
export async function ownersKey(file: string, url: string): Promise<string> {
  const store = await openStore({ file });
  const link = await consoleSignInLink({ store, clock: await shopClock(store), newId });
  await store.close();
  if (!link.ok) throw new Error(link.fault.code);
  const answer = await fetch(`${url}api/v1/set-password`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ link: link.value.secret, password: 'lake, mist and copper' }),
  });
  const cookie = answer.headers.getSetCookie().find((each) => each.startsWith('tautwork-session='));
  if (cookie === undefined) throw new Error(await answer.text());
  return decodeURIComponent(/=([^;]+)/.exec(cookie)![1]!);
}
