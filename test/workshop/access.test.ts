import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { PERMISSIONS, permissionsOf, type Role } from '../../src/contract/index.js';
import type { Result } from '../../src/core/foundation/index.js';
import { openStore, type Store, type StorePlace } from '../../src/store/index.js';
import {
  type AccessParts,
  type Actor,
  authenticate,
  changePassword,
  consoleSignInLink,
  enrolDeviceCase,
  firstOwner,
  newId,
  perform,
  pinSignIn,
  recognise,
  setPassword,
  setPin,
  signIn,
  signOut,
  slowHash,
  useCaseNamed,
  type WorkshopFault,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';

const PASSWORD = 'seven copper kettles';
const PIN = '8264';
const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const QUICK = slowHash({ N: 2, r: 1, p: 1 });
const CONSOLE: Actor = { by: 'console', permissions: new Set(PERMISSIONS) };

for (const engine of engines()) {
  describe(`the way in, on ${engine.name}`, () => {
    let place: StorePlace;
    let store: Store;
    let parts: AccessParts;
    let moment: number;

    beforeEach(async () => {
      place = await engine.place();
      store = await openStore(place);
      moment = Date.parse('2027-03-01T08:00:00.000Z');
      parts = partsOn(store);
    });

    afterEach(() => store.close());

    /** As after a power cut: another program over the same records. */
    const restart = async () => {
      await store.close();
      store = await openStore(place);
      parts = partsOn(store);
    };
    const partsOn = (on: Store): AccessParts => ({
      store: on,
      clock: { now: () => new Date(moment).toISOString() },
      newId,
      slowHash: QUICK,
    });
    const wait = (ms: number) => {
      moment += ms;
    };
    const ask = async (name: string, input: object, actor = CONSOLE) =>
      perform(store, useCaseNamed(name)!, { actor, clock: parts.clock, newId, input });
    const done = async (name: string, input: object) =>
      valueIn(await ask(name, input)) as Record<string, { id: string; secret: string }> & { secret: string };

    /** A person who has a password. */
    const person = async (name: string, ...roles: Role[]) => {
      const id = newId();
      const { link } = await done('invite-person', { id, name, roles });
      const { key } = valueIn(await setPassword(parts, { link: link!.secret, password: PASSWORD }));
      return { id, key, name };
    };
    const known = async (key: string) => valueIn(await recognise(parts, { session: key }));
    const device = async () => {
      const input = { id: newId(), name: 'Tablet at the lathe' };
      const enrolled = await perform(store, enrolDeviceCase, {
        actor: CONSOLE,
        clock: parts.clock,
        newId,
        input,
      });
      return { id: input.id, key: valueIn(enrolled).secret };
    };
    const change = async (id: string, changed: object) => {
      const record = await store.read(({ records }) => records.get('person', id));
      return ask('change-person', { id, expectedVersion: record!.version, ...changed });
    };

    describe('the first start', () => {
      it('makes the owner, and a link that lets in once', async () => {
        const first = await firstOwner(parts);
        expect(first!.person.body).toEqual({ name: 'Owner', roles: ['owner'], active: true });
        const signedIn = valueIn(await setPassword(parts, { link: first!.secret, password: PASSWORD }));
        expect(signedIn.session.via).toBe('sign-in-link');
        expect((await known(signedIn.key)).actor.permissions).toEqual(permissionsOf(['owner']));
        expect(faultIn(await setPassword(parts, { link: first!.secret, password: PASSWORD })).code).toBe(
          'access.link-refused',
        );
      });

      it('makes another link at each start until the owner can sign in, and never a second owner', async () => {
        const [first, second] = [await firstOwner(parts), await firstOwner(parts)];
        expect(second!.person.id).toBe(first!.person.id);
        expect(faultIn(await setPassword(parts, { link: first!.secret, password: PASSWORD })).code).toBe(
          'access.link-refused',
        );
        valueIn(await setPassword(parts, { link: second!.secret, password: PASSWORD }));
        expect(await firstOwner(parts)).toBeUndefined();
        expect(await store.read(({ records }) => records.all('person'))).toHaveLength(1);
      });

      it('makes a link that runs out after a day', async () => {
        const first = await firstOwner(parts);
        wait(DAY);
        expect(faultIn(await setPassword(parts, { link: first!.secret, password: PASSWORD })).code).toBe(
          'access.link-refused',
        );
      });

      it('can be made good from the console: a new link for the owner, or for anyone by name', async () => {
        const owner = await person('Marten', 'owner');
        await person('Wren', 'packer');
        expect(valueIn(await consoleSignInLink(parts)).person.id).toBe(owner.id);
        const link = valueIn(await consoleSignInLink(parts, ' wren '));
        expect(link.person.body.name).toBe('Wren');
        valueIn(await setPassword(parts, { link: link.secret, password: 'eleven grey herons' }));
        expect(faultIn(await signIn(parts, { name: 'Wren', password: PASSWORD })).code).toBe(
          'access.sign-in-refused',
        );
        expect(faultIn(await consoleSignInLink(parts, 'Nobody'))).toMatchObject({
          code: 'access.person-unknown',
          known: ['Marten', 'Wren'],
        });
      });
    });

    describe('signing in', () => {
      it('takes the name in any letter case, and the password to the letter', async () => {
        const { id } = await person('Marten Holt', 'winder');
        const signedIn = valueIn(await signIn(parts, { name: ' marten  HOLT', password: PASSWORD }));
        expect(signedIn.person.id).toBe(id);
        expect(
          faultIn(await signIn(parts, { name: 'Marten Holt', password: PASSWORD.toUpperCase() })).code,
        ).toBe('access.sign-in-refused');
      });

      it('tells a wrong password and an unknown name alike', async () => {
        await person('Marten', 'winder');
        const wrong = faultIn(await signIn(parts, { name: 'Marten', password: 'wrong' }));
        expect(faultIn(await signIn(parts, { name: 'Merle', password: 'wrong' }))).toEqual(wrong);
        expect(wrong).toEqual({ code: 'access.sign-in-refused', with: 'password', attemptsLeft: 4 });
      });

      it('refuses a person who never set a password', async () => {
        await done('invite-person', { id: newId(), name: 'Wren', roles: ['packer'] });
        expect(faultIn(await signIn(parts, { name: 'Wren', password: '' })).code).toBe(
          'access.sign-in-refused',
        );
      });

      it('hashes the password anew when the usual cost has changed', async () => {
        const { id } = await person('Marten', 'winder');
        const dearer = { ...parts, slowHash: slowHash({ N: 4, r: 1, p: 1 }) };
        const kept = async () =>
          (await store.read(({ access }) => access.credential(id, 'password')))!.secretHash;
        expect(await kept()).toMatch(/^scrypt\$2,1,1\$/);
        valueIn(await signIn(dearer, { name: 'Marten', password: PASSWORD }));
        expect(await kept()).toMatch(/^scrypt\$4,1,1\$/);
        valueIn(await signIn(dearer, { name: 'Marten', password: PASSWORD }));
      });

      it('keeps no secret in the clear, in the journal or anywhere', async () => {
        const owner = await person('Marten', 'owner');
        const { key } = valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD }));
        valueIn(await setPin(parts, await known(key), { password: PASSWORD, pin: PIN }));
        const made = await done('make-token', {
          id: newId(),
          personId: owner.id,
          name: 't',
          scopes: ['stock.read'],
        });
        const journal = await store.read(({ journal }) => journal.list({ limit: 100 }));
        // Four digits can stand in an id or a moment by chance.
        const told = JSON.stringify(journal).replace(
          /[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}|[\d-]{10}T[\d:.]+Z/g,
          '',
        );
        expect(journal.items.map(({ useCase }) => useCase)).toEqual(
          expect.arrayContaining(['invite-person', 'set-password', 'set-pin', 'make-token']),
        );
        for (const secret of [PASSWORD, PIN, key.split('.')[1]!, made.secret.split('_').at(-1)!]) {
          expect(told).not.toContain(secret);
        }
      });
    });

    describe('wrong attempts', () => {
      const fail5 = async (name: string) => {
        for (let at = 0; at < 5; at += 1) faultIn(await signIn(parts, { name, password: 'wrong' }));
      };

      it('lock after five, also for the right password, and for the next quarter of an hour', async () => {
        await person('Marten', 'winder');
        await fail5('Marten');
        const locked = faultIn(await signIn(parts, { name: 'Marten', password: PASSWORD }));
        expect(locked).toEqual({ code: 'access.locked', lockedUntil: '2027-03-01T08:15:00.000Z' });
        wait(15 * MINUTE);
        valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD }));
      });

      it('are remembered over a restart', async () => {
        await person('Marten', 'winder');
        await fail5('Marten');
        await restart();
        expect(faultIn(await signIn(parts, { name: 'Marten', password: PASSWORD })).code).toBe(
          'access.locked',
        );
      });

      it('lock twice as long each further time, a day at most, until a right one forgives', async () => {
        await person('Marten', 'winder');
        await fail5('Marten');
        const locks: number[] = [];
        for (let at = 0; at < 9; at += 1) {
          const { lockedUntil } = faultIn(await signIn(parts, { name: 'Marten', password: 'wrong' }));
          locks.push((Date.parse(String(lockedUntil)) - moment) / MINUTE);
          wait(locks.at(-1)! * MINUTE);
          faultIn(await signIn(parts, { name: 'Marten', password: 'wrong' }));
        }
        expect(locks).toEqual([15, 30, 60, 120, 240, 480, 960, 1440, 1440]);
        wait(DAY);
        valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD }));
        expect(faultIn(await signIn(parts, { name: 'Marten', password: 'wrong' })).attemptsLeft).toBe(4);
      });

      it('are counted one by one where many come at once', async () => {
        await person('Marten', 'winder');
        const all = await Promise.all(
          Array.from({ length: 20 }, () => signIn(parts, { name: 'Marten', password: 'wrong' })),
        );
        const codes = all.map((outcome) => faultIn(outcome).code);
        expect(codes.filter((code) => code === 'access.sign-in-refused')).toHaveLength(5);
        expect(codes.filter((code) => code === 'access.locked')).toHaveLength(15);
      });

      it('lock a name that nobody has in the same way, so that the lock tells nothing', async () => {
        await fail5('Nobody at all');
        expect(faultIn(await signIn(parts, { name: 'Nobody at all', password: 'x' })).code).toBe(
          'access.locked',
        );
      });

      it('of one person lock no other', async () => {
        await person('Marten', 'winder');
        await person('Wren', 'packer');
        await fail5('Marten');
        valueIn(await signIn(parts, { name: 'Wren', password: PASSWORD }));
      });

      it('are forgiven by a one-time link', async () => {
        const { id } = await person('Marten', 'winder');
        await fail5('Marten');
        const { link } = await done('make-sign-in-link', { personId: id });
        valueIn(await setPassword(parts, { link: link!.secret, password: 'eleven grey herons' }));
        valueIn(await signIn(parts, { name: 'Marten', password: 'eleven grey herons' }));
      });

      it('at changing the password count as at the door', async () => {
        const { key } = await person('Marten', 'winder');
        const me = await known(key);
        for (let at = 0; at < 5; at += 1) {
          faultIn(await changePassword(parts, me, { password: 'wrong', newPassword: 'eleven grey herons' }));
        }
        expect(faultIn(await setPin(parts, me, { password: PASSWORD, pin: PIN })).code).toBe('access.locked');
      });
    });

    describe('a session', () => {
      it('lives on while it is used, at a desk for 30 days and not longer', async () => {
        const { key } = await person('Marten', 'winder');
        for (let day = 0; day < 29; day += 3) {
          expect((await authenticate(parts, { session: key })).ok).toBe(true);
          wait(3 * DAY);
        }
        expect(faultIn(await authenticate(parts, { session: key })).code).toBe('access.session-over');
      });

      it('ends after a week without use; to be looked at is no use', async () => {
        const { key } = await person('Marten', 'winder');
        wait(4 * DAY);
        expect((await recognise(parts, { session: key })).ok).toBe(true);
        wait(3 * DAY);
        expect(faultIn(await authenticate(parts, { session: key })).code).toBe('access.session-over');
      });

      it('ends with a sign-out, at once and alone', async () => {
        await person('Marten', 'winder');
        const [one, other] = [
          valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD })),
          valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD })),
        ];
        await signOut(parts, one!.session.id);
        expect(faultIn(await authenticate(parts, { session: one!.key })).code).toBe('access.session-over');
        expect((await authenticate(parts, { session: other!.key })).ok).toBe(true);
      });

      it('is of no use with another secret, or another id', async () => {
        const [marten, wren] = [await person('Marten', 'owner'), await person('Wren', 'packer')];
        const [martenId] = marten.key.split('.');
        const [, wrenSecret] = wren.key.split('.');
        for (const session of [`${martenId}.${wrenSecret}`, marten.key.slice(0, -1), 'x', '']) {
          expect(faultIn(await authenticate(parts, { session })).code).toBe('access.session-over');
        }
      });

      it('can be ended by its person and by the owner, and by nobody else', async () => {
        const [marten, wren, owner] = [
          await person('Marten', 'winder'),
          await person('Wren', 'packer'),
          await person('Heron', 'owner'),
        ];
        const id = (await known(marten.key)).session!.id;
        const by = async (key: string) => ask('revoke-session', { id }, (await known(key)).actor);
        expect(faultIn(await by(wren.key)).code).toBe('record.missing');
        expect(
          faultIn(await ask('revoke-sessions', { personId: marten.id }, (await known(wren.key)).actor)).code,
        ).toBe('permission.missing');
        valueIn(await by(owner.key));
        expect((await recognise(parts, { session: marten.key })).ok).toBe(false);
        const { key, session } = valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD }));
        valueIn(await ask('revoke-session', { id: session.id }, (await known(key)).actor));
        expect((await recognise(parts, { session: key })).ok).toBe(false);
      });

      it('ends with all others of a person at one word, and leaves those of others', async () => {
        const [marten, wren] = [await person('Marten', 'winder'), await person('Wren', 'packer')];
        const second = valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD }));
        valueIn(await ask('revoke-sessions', { personId: marten.id }));
        for (const key of [marten.key, second.key])
          expect((await recognise(parts, { session: key })).ok).toBe(false);
        expect((await recognise(parts, { session: wren.key })).ok).toBe(true);
      });

      it('has the roles of this moment, not of the sign-in', async () => {
        const { id, key } = await person('Marten', 'winder');
        valueIn(await change(id, { roles: ['packer'] }));
        expect((await known(key)).actor.permissions).toEqual(permissionsOf(['packer']));
      });
    });

    describe('a changed password', () => {
      it('signs out everywhere else, and goes on here under a new key', async () => {
        const { key } = await person('Marten', 'winder');
        const elsewhere = valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD }));
        const changed = { password: PASSWORD, newPassword: 'eleven grey herons' };
        const here = valueIn(await changePassword(parts, await known(key), changed));
        for (const old of [key, elsewhere.key])
          expect((await recognise(parts, { session: old })).ok).toBe(false);
        expect((await recognise(parts, { session: here.key })).ok).toBe(true);
        expect((await signIn(parts, { name: 'Marten', password: PASSWORD })).ok).toBe(false);
        valueIn(await signIn(parts, { name: 'Marten', password: 'eleven grey herons' }));
      });

      it('must not be easily guessed', async () => {
        const { key } = await person('Marten', 'winder');
        const changed = { password: PASSWORD, newPassword: 'aaaaaaaaaaaa' };
        expect(faultIn(await changePassword(parts, await known(key), changed))).toMatchObject({
          code: 'access.password-weak',
          because: 'few-signs',
        });
      });
    });

    describe('a PIN', () => {
      const withPin = async (name: string, ...roles: Role[]) => {
        const made = await person(name, ...roles);
        valueIn(await setPin(parts, await known(made.key), { password: PASSWORD, pin: PIN }));
        return made;
      };

      it('is taken on an enrolled device only', async () => {
        const { id: personId } = await withPin('Marten', 'winder');
        const tablet = await device();
        for (const key of [undefined, 'x', `${tablet.id}.${'a'.repeat(43)}`]) {
          expect(faultIn(await pinSignIn(parts, { device: key, personId, pin: PIN })).code).toBe(
            'access.device-not-enrolled',
          );
        }
        const signedIn = valueIn(await pinSignIn(parts, { device: tablet.key, personId, pin: PIN }));
        expect(signedIn.session).toMatchObject({ via: 'pin', deviceId: tablet.id });
      });

      it('is limited in attempts like a password, and remembered over a restart', async () => {
        const { id: personId } = await withPin('Marten', 'winder');
        const tablet = await device();
        for (let at = 0; at < 5; at += 1) {
          faultIn(await pinSignIn(parts, { device: tablet.key, personId, pin: '0007' }));
        }
        await restart();
        expect(faultIn(await pinSignIn(parts, { device: tablet.key, personId, pin: PIN })).code).toBe(
          'access.locked',
        );
        valueIn(await signIn(parts, { name: 'Marten', password: PASSWORD }));
      });

      it("is enough for the floor's work, and not for people or passwords", async () => {
        const { id: personId } = await withPin('Heron', 'owner');
        const tablet = await device();
        const { key } = valueIn(await pinSignIn(parts, { device: tablet.key, personId, pin: PIN }));
        const me = await known(key);
        expect(me.actor.permissions.has('run.work')).toBe(true);
        expect(me.actor.permissions.has('people.manage')).toBe(false);
        const changed = { password: PASSWORD, newPassword: 'eleven grey herons' };
        expect(faultIn(await changePassword(parts, me, changed)).code).toBe('permission.missing');
        expect(faultIn(await setPin(parts, me, { password: PASSWORD, pin: '9731' })).code).toBe(
          'permission.missing',
        );
      });

      it('lets in for a shift: 4 hours without use, 14 hours in all', async () => {
        const { id: personId } = await withPin('Marten', 'winder');
        const tablet = await device();
        const begin = async () =>
          valueIn(await pinSignIn(parts, { device: tablet.key, personId, pin: PIN })).key;
        const idle = await begin();
        wait(4 * 60 * MINUTE);
        expect((await authenticate(parts, { session: idle })).ok).toBe(false);
        const used = await begin();
        for (let hour = 0; hour < 14; hour += 1) {
          expect((await authenticate(parts, { session: used })).ok).toBe(true);
          wait(60 * MINUTE);
        }
        expect((await authenticate(parts, { session: used })).ok).toBe(false);
      });

      it('is refused where it is one of the first that anybody tries', async () => {
        const { key } = await person('Marten', 'winder');
        expect(faultIn(await setPin(parts, await known(key), { password: PASSWORD, pin: '1234' })).code).toBe(
          'access.pin-weak',
        );
      });

      it('lets nobody in on a device that was lost and revoked, and signs out who is there', async () => {
        const { id: personId, key: desk } = await withPin('Marten', 'winder');
        const [lost, other] = [await device(), await device()];
        const there = valueIn(await pinSignIn(parts, { device: lost!.key, personId, pin: PIN }));
        const elsewhere = valueIn(await pinSignIn(parts, { device: other!.key, personId, pin: PIN }));
        valueIn(await ask('revoke-device', { id: lost!.id }));
        expect((await recognise(parts, { session: there.key })).ok).toBe(false);
        for (const key of [desk, elsewhere.key])
          expect((await recognise(parts, { session: key })).ok).toBe(true);
        expect(faultIn(await pinSignIn(parts, { device: lost!.key, personId, pin: PIN })).code).toBe(
          'access.device-not-enrolled',
        );
      });
    });

    describe('a token', () => {
      const token = async (personId: string, scopes: readonly string[], more = {}) => {
        const id = newId();
        const { secret } = await done('make-token', {
          id,
          personId,
          name: 'nightly export',
          scopes,
          ...more,
        });
        return { id, secret };
      };
      const may = async (secret: string) => [
        ...valueIn(await recognise(parts, { token: secret })).actor.permissions,
      ];

      it('may do what its scopes and its person have in common, at this moment', async () => {
        const { id } = await person('Marten', 'winder', 'packer');
        const made = await token(id, ['run.work', 'pack.work']);
        expect((await may(made.secret)).sort()).toEqual(['pack.work', 'run.work']);
        valueIn(await change(id, { roles: ['packer'] }));
        expect(await may(made.secret)).toEqual(['pack.work']);
      });

      it('is named in the journal by itself', async () => {
        const { id } = await person('Marten', 'winder');
        const made = await token(id, ['run.work']);
        const { actor } = valueIn(await recognise(parts, { token: made.secret }));
        expect(actor).toMatchObject({ by: `token/${made.id}`, personId: id });
      });

      it('has no scope that its person lacks, and none that would make it a key to more', async () => {
        const { id } = await person('Marten', 'winder');
        const input = { id: newId(), personId: id, name: 't' };
        expect(faultIn(await ask('make-token', { ...input, scopes: ['plan.freeze'] }))).toMatchObject({
          code: 'access.scopes-too-wide',
          beyond: ['plan.freeze'],
        });
        for (const scope of ['people.manage', 'account.own']) {
          expect(faultIn(await ask('make-token', { ...input, scopes: [scope] })).code).toBe('input.invalid');
        }
      });

      it('ends when it is revoked, when it runs out, and when it is not whole', async () => {
        const { id } = await person('Marten', 'winder');
        const made = await token(id, ['run.work'], { expiresAt: '2027-03-02T08:00:00.000Z' });
        const forever = await token(id, ['run.work']);
        expect((await recognise(parts, { token: made.secret })).ok).toBe(true);
        wait(DAY);
        expect(faultIn(await recognise(parts, { token: made.secret })).code).toBe('access.token-refused');
        valueIn(await ask('revoke-token', { id: forever.id }));
        for (const secret of [
          forever.secret,
          forever.secret.slice(0, -2),
          'twk_',
          '',
          made.secret.slice(4),
        ]) {
          expect(faultIn(await recognise(parts, { token: secret })).code).toBe('access.token-refused');
        }
      });
    });

    describe('a person who is let in no more', () => {
      it('loses sessions, tokens, links, password and PIN at once', async () => {
        const { id, key } = await person('Marten', 'winder');
        valueIn(await setPin(parts, await known(key), { password: PASSWORD, pin: PIN }));
        const made = await done('make-token', { id: newId(), personId: id, name: 't', scopes: ['run.work'] });
        const { link } = await done('make-sign-in-link', { personId: id });
        const tablet = await device();
        valueIn(await change(id, { active: false }));

        const refused = [
          await recognise(parts, { session: key }),
          await recognise(parts, { token: made.secret }),
          await setPassword(parts, { link: link!.secret, password: PASSWORD }),
          await signIn(parts, { name: 'Marten', password: PASSWORD }),
          await pinSignIn(parts, { device: tablet.key, personId: id, pin: PIN }),
        ];
        expect(refused.map(({ ok }) => ok)).toEqual([false, false, false, false, false]);
        expect(faultIn(await ask('make-sign-in-link', { personId: id })).code).toBe('access.person-inactive');

        valueIn(await change(id, { active: true }));
        expect((await recognise(parts, { session: key })).ok).toBe(false);
        expect((await recognise(parts, { token: made.secret })).ok).toBe(false);
        expect((await signIn(parts, { name: 'Marten', password: PASSWORD })).ok).toBe(false);
      });

      it('is nobody to any key that was left, however that came about', async () => {
        const { id, key } = await person('Marten', 'winder');
        const made = await done('make-token', { id: newId(), personId: id, name: 't', scopes: ['run.work'] });
        const body = { name: 'Marten', roles: ['winder'] as Role[], active: false };
        const change = { id, expectedVersion: 1, body, at: parts.clock.now() };
        await store.write(({ records }) => records.update('person', change));
        expect((await recognise(parts, { session: key })).ok).toBe(false);
        expect((await recognise(parts, { token: made.secret })).ok).toBe(false);
        expect((await signIn(parts, { name: 'Marten', password: PASSWORD })).ok).toBe(false);
      });

      it('is never the last owner', async () => {
        const { id } = await person('Heron', 'owner');
        expect(faultIn(await change(id, { active: false })).code).toBe('access.last-owner');
        expect(faultIn(await change(id, { roles: ['winder'] })).code).toBe('access.last-owner');
        const second = await person('Marten', 'owner', 'winder');
        const both = await Promise.all([
          change(id, { roles: ['winder'] }),
          change(second.id, { active: false }),
        ]);
        expect(both.filter(({ ok }) => ok)).toHaveLength(1);
      });
    });

    it('no two people have the same name, however it is written', async () => {
      const { id } = await person('Marten Holt', 'winder');
      const again = { id: newId(), name: 'marten  holt', roles: ['packer'] };
      expect(faultIn(await ask('invite-person', again)).code).toBe('access.name-taken');
      await person('Wren', 'packer');
      expect(faultIn(await change(id, { name: 'WREN' })).code).toBe('access.name-taken');
      valueIn(await change(id, { name: 'Marten H.' }));
    });

    it('a change of a person over a newer version is refused with both', async () => {
      const { id } = await person('Marten', 'winder');
      valueIn(await change(id, { roles: ['packer'] }));
      const stale = await ask('change-person', { id, expectedVersion: 1, roles: ['coiler'] });
      expect(faultIn(stale)).toMatchObject({
        code: 'stale-version',
        expectedVersion: 1,
        current: { version: 2, body: { roles: ['packer'] } },
      });
    });
  });
}

function valueIn<T>(outcome: Result<T, WorkshopFault>): T {
  if (!outcome.ok) throw new Error(`Refused: ${JSON.stringify(outcome.fault)}`);
  return outcome.value;
}

function faultIn(outcome: Result<unknown, WorkshopFault>): WorkshopFault {
  if (outcome.ok) throw new Error(`Not refused: ${JSON.stringify(outcome.value)}`);
  return outcome.fault;
}
