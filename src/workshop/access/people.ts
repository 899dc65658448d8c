import { type BodyOf, changePerson, invitePerson, makeSignInLink } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import type { ReadTransaction, Transaction } from '../../store/index.js';
import { needRecord, recordAsSeen } from '../record-change.js';
import { useCase } from '../use-case.js';
import { type Person, personNamed } from './person-names.js';
import { newSignInLink } from './sign-in-links.js';
import { revokeTokensOf } from './tokens.js';

/** Takes a person in. The first sign-in goes by the link. */
export const invitePersonCase = useCase(invitePerson, async ({ tx, now }, { id, name, roles }) => {
  if (await personNamed(tx, name)) return fail({ code: 'access.name-taken', name });
  const person = await tx.records.insert('person', {
    id,
    body: { name: name.trim(), roles, active: true },
    at: now,
  });
  return succeed({ person, link: await newSignInLink(tx, { personId: id, from: 'invitation', now }) });
});

/** A new link; the password in force stays until the link is used. */
export const makeSignInLinkCase = useCase(makeSignInLink, async ({ tx, now }, { personId }) => {
  const person = await needRecord(tx, 'person', personId);
  if (!person.body.active) return fail({ code: 'access.person-inactive', name: person.body.name });
  return succeed({ link: await newSignInLink(tx, { personId, from: 'invitation', now }) });
});

/** Changes a person. Whoever is let in no more loses every key at once, and needs a new link to come back. */
export const changePersonCase = useCase(changePerson, async ({ tx, now }, input) => {
  const { id, expectedVersion, name, roles, active } = input;
  const person = await recordAsSeen(tx, 'person', { id, expectedVersion });
  const body: BodyOf<'person'> = {
    ...person.body,
    name: name?.trim() ?? person.body.name,
    roles: roles ?? person.body.roles,
    active: active ?? person.body.active,
  };
  const namesake = await personNamed(tx, body.name);
  if (namesake && namesake.id !== id) return fail({ code: 'access.name-taken', name: body.name });
  if (isOwner(person.body) && !isOwner(body) && (await isLastOwner(tx, person))) {
    return fail({ code: 'access.last-owner', name: person.body.name });
  }
  if (!body.active) await takeKeysFrom(tx, id, now);
  return succeed(await tx.records.update('person', { id, expectedVersion, body, at: now }));
});

/** Someone who is let in and keeps the shop. */
export const isOwner = ({ roles, active }: BodyOf<'person'>): boolean => active && roles.includes('owner');

async function isLastOwner({ records }: Pick<ReadTransaction, 'records'>, { id }: Person): Promise<boolean> {
  const people = await records.all('person');
  return !people.some((other) => other.id !== id && isOwner(other.body));
}

async function takeKeysFrom(tx: Transaction, personId: string, now: string): Promise<void> {
  await tx.access.revokeSessions({ personId }, now);
  await revokeTokensOf(tx, personId, now);
  for (const kind of ['password', 'pin', 'sign-in-link'] as const)
    await tx.access.dropCredential(personId, kind);
}
