import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Device, Session, Store, Token } from '../../src/store/index.js';
import { engines } from './harness.js';
import { at, personBody } from './samples.js';

describe.each(engines())('access and small tables on $name', (engine) => {
  let store: Store;
  let personId: string;
  beforeAll(async () => {
    store = await engine.open();
    personId = randomUUID();
    await store.write((tx) =>
      tx.records.insert('person', { id: personId, body: personBody('Ada'), at: at(0) }),
    );
  });

  const device = (): Device => ({
    id: randomUUID(),
    name: 'tablet by the winder',
    secretHash: 'h',
    enrolledAt: at(1),
    revokedAt: null,
  });
  const session = (changes: Partial<Session> = {}): Session => ({
    id: randomUUID(),
    personId,
    secretHash: 'h',
    via: 'password',
    deviceId: null,
    createdAt: at(2),
    expiresAt: at(30),
    revokedAt: null,
    ...changes,
  });

  it('keep one credential of a kind for a person, found by its person or its hash', async () => {
    const link = { personId, kind: 'sign-in-link', secretHash: 'h1', expiresAt: at(9) } as const;
    await store.write(async ({ access }) => {
      await access.putCredential(link);
      await access.putCredential({ ...link, kind: 'password', expiresAt: null });
      await access.putCredential({ ...link, secretHash: 'h2' });
    });
    await store.read(async ({ access }) => {
      expect(await access.credential(personId, 'sign-in-link')).toEqual({ ...link, secretHash: 'h2' });
      expect(await access.credentialByHash('sign-in-link', 'h2')).toMatchObject({ personId });
      expect(await access.credentialByHash('sign-in-link', 'h1')).toBeUndefined();
      expect(await access.credentialByHash('pin', 'h2')).toBeUndefined();
    });
    await store.write(({ access }) => access.dropCredential(personId, 'sign-in-link'));
    await store.read(async ({ access }) => {
      expect(await access.credential(personId, 'sign-in-link')).toBeUndefined();
      expect(await access.credential(personId, 'password')).toBeDefined();
    });
  });

  it('keep sessions with the first moment of their end', async () => {
    const tablet = device();
    const [one, two, three] = [session(), session({ deviceId: tablet.id, via: 'pin' }), session()];
    await store.write(async ({ access }) => {
      await access.addDevice(tablet);
      for (const each of [one, two, three]) await access.addSession(each);
      await access.revokeSession(one.id, at(5));
      await access.revokeSession(one.id, at(7));
      await access.revokeSessions({ deviceId: tablet.id }, at(6));
      await access.extendSession(three.id, at(50));
    });
    await store.read(async ({ access }) => {
      expect(await access.session(one.id)).toEqual({ ...one, revokedAt: at(5) });
      expect(await access.session(two.id)).toEqual({ ...two, revokedAt: at(6) });
      expect(await access.session(three.id)).toEqual({ ...three, expiresAt: at(50) });
    });
    await store.write(({ access }) => access.revokeSessions({ personId }, at(8)));
    const ends = await store.read(({ access }) => access.sessions(personId));
    expect(new Map(ends.map(({ id, revokedAt }) => [id, revokedAt]))).toEqual(
      new Map([
        [one.id, at(5)],
        [two.id, at(6)],
        [three.id, at(8)],
      ]),
    );
    await store.write(({ access }) => access.forgetSessions(at(7)));
    expect((await store.read(({ access }) => access.sessions(personId))).map(({ id }) => id)).toEqual([
      three.id,
    ]);
  });

  it('keep devices and tokens, revoked ones too', async () => {
    const tablet = device();
    const token: Token = {
      id: randomUUID(),
      name: 'stock script',
      personId,
      secretHash: 'h',
      scopes: ['stock.read', 'wire.weigh'],
      createdAt: at(3),
      expiresAt: null,
      revokedAt: null,
    };
    await store.write(async ({ access }) => {
      await access.addDevice(tablet);
      await access.addToken(token);
      await access.revokeDevice(tablet.id, at(4));
      await access.revokeToken(token.id, at(4));
    });
    await store.read(async ({ access }) => {
      expect(await access.device(tablet.id)).toEqual({ ...tablet, revokedAt: at(4) });
      expect(await access.devices()).toContainEqual({ ...tablet, revokedAt: at(4) });
      expect(await access.token(token.id)).toEqual({ ...token, revokedAt: at(4) });
      expect(await access.tokens()).toEqual([{ ...token, revokedAt: at(4) }]);
    });
  });

  it('refuse a session of nobody', async () => {
    const lost = session({ personId: randomUUID() });
    await expect(store.write(({ access }) => access.addSession(lost))).rejects.toThrow(/foreign key/i);
  });

  it('count attempts over the last count', async () => {
    const subject = `pin/${personId}`;
    await store.write(({ access }) => access.putAttempts({ subject, failures: 1, lockedUntil: null }));
    await store.write(({ access }) => access.putAttempts({ subject, failures: 2, lockedUntil: at(9) }));
    expect(await store.read(({ access }) => access.attempts(subject))).toEqual({
      subject,
      failures: 2,
      lockedUntil: at(9),
    });
    expect(await store.read(({ access }) => access.attempts('pin/nobody'))).toBeUndefined();
  });

  it('give a repeat the answer of the first time, and never two answers', async () => {
    const row = {
      requestId: randomUUID(),
      useCase: 'save-bin',
      inputHash: 'i',
      answer: { record: { id: 'x', none: null } },
      at: at(1),
    };
    await store.write(({ repeats }) => repeats.save(row));
    const { requestId, at: _, ...kept } = row;
    expect(await store.write(({ repeats }) => repeats.find(requestId))).toEqual(kept);
    expect(await store.write(({ repeats }) => repeats.find(randomUUID()))).toBeUndefined();
    await expect(store.write(({ repeats }) => repeats.save(row))).rejects.toThrow(/unique/i);
  });

  it('remember how the columns of a source were understood last', async () => {
    await store.write(({ mappings }) => mappings.put('web shop', { gauge: 'Stärke', player: 'Name' }));
    await store.write(({ mappings }) => mappings.put('web shop', { gauge: 'Gauge' }));
    expect(await store.read(({ mappings }) => mappings.get('web shop'))).toEqual({ gauge: 'Gauge' });
    expect(await store.read(({ mappings }) => mappings.get('letter'))).toBeUndefined();
  });
});
