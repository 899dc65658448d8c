import { expect, it } from 'vitest';
import { serveDemo } from '../../src/server/index.js';
import { DEMO_PASSWORD, DEMO_PEOPLE } from '../../src/workshop/index.js';

it('the demo workshop opens at work, to people who can sign in as the handbook says', async () => {
  const served = await serveDemo({ port: 0, history: { days: 14 } });
  if (!served.ok) throw new Error(served.fault.code);
  const { url, close, firstLink } = served.value;
  try {
    expect(firstLink).toBeUndefined();
    const entered = await fetch(`${url}api/v1/sign-in`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ name: DEMO_PEOPLE.owner.name, password: DEMO_PASSWORD }),
    });
    expect(entered.status).toBe(200);
    const cookie = entered.headers
      .getSetCookie()
      .map((each) => each.split(';')[0])
      .join('; ');
    const ask = async (path: string) => (await fetch(`${url}api/v1/${path}`, { headers: { cookie } })).json();
    expect(await ask('now')).toMatchObject({ today: '2027-03-01', invented: true });
    expect(await ask('runs?state=running')).toMatchObject({ items: [{ state: 'running' }] });
  } finally {
    await close();
  }
});
