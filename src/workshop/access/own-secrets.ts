import { fail, type Result, succeed } from '../../core/foundation/index.js';
import type { ReadTransaction, Transaction } from '../../store/index.js';
import type { WorkshopFault } from '../use-case.js';
import type { AccessParts } from './access-parts.js';
import { attemptsOf, forgiveAttempts } from './attempts.js';
import type { Known } from './authenticate.js';
import { checkClaim } from './check-password.js';
import type { Person } from './person-names.js';
import { hashOfSecret } from './secrets.js';
import { openSession, type SignedIn } from './sessions.js';
import { passwordFault, pinFault } from './weak-secrets.js';

/**
 * Sets a password by a one-time link and signs in. The link is used up, and whoever was signed in under that name, or was
 * locked out, is so no more.
 */
export async function setPassword(
  parts: AccessParts,
  { link, password }: { readonly link: string; readonly password: string },
): Promise<Result<SignedIn, WorkshopFault>> {
  const { store, slowHash, newId, clock } = parts;
  const invited = await store.read((tx) => personOfLink(tx, link, clock.now()));
  if (!invited.ok) return invited;
  const weak = passwordFault(password, invited.value.body.name);
  if (weak) return fail(weak);
  const secretHash = await slowHash.hash(password);
  return store.write(async (tx) => {
    const now = clock.now();
    const person = await personOfLink(tx, link, now);
    if (!person.ok) return person;
    const personId = person.value.id;
    await tx.access.dropCredential(personId, 'sign-in-link');
    await putPassword(tx, { personId, secretHash, now });
    await forgiveAttempts(tx, attemptsOf('pin', personId));
    await note(parts, tx, { useCase: 'set-password', by: `person/${personId}`, now });
    const begun = { person: person.value, via: 'sign-in-link', id: newId(), now } as const;
    return succeed(await openSession(tx, begun));
  });
}

/** Changes one's own password. Everyone else who was signed in under that name is signed out; this session goes on under a
 * new key. */
export async function changePassword(
  parts: AccessParts,
  { person, actor }: Known,
  { password, newPassword }: { readonly password: string; readonly newPassword: string },
): Promise<Result<SignedIn, WorkshopFault>> {
  const refused = await checkOwn(parts, { person, actor }, password);
  const weak = refused ?? passwordFault(newPassword, person.body.name);
  if (weak) return fail(weak);
  const secretHash = await parts.slowHash.hash(newPassword);
  return parts.store.write(async (tx) => {
    const now = parts.clock.now();
    await putPassword(tx, { personId: person.id, secretHash, now });
    await note(parts, tx, { useCase: 'change-password', by: actor.by, now });
    return succeed(await openSession(tx, { person, via: 'password', id: parts.newId(), now }));
  });
}

/** Sets one's own PIN. The password is asked again, so that a session left open does not give a PIN away. */
export async function setPin(
  parts: AccessParts,
  { person, actor }: Known,
  { password, pin }: { readonly password: string; readonly pin: string },
): Promise<Result<{ readonly done: true }, WorkshopFault>> {
  const refused = (await checkOwn(parts, { person, actor }, password)) ?? pinFault(pin);
  if (refused) return fail(refused);
  const secretHash = await parts.slowHash.hash(pin);
  return parts.store.write(async (tx) => {
    await tx.access.putCredential({ personId: person.id, kind: 'pin', secretHash, expiresAt: null });
    await forgiveAttempts(tx, attemptsOf('pin', person.id));
    await note(parts, tx, { useCase: 'set-pin', by: actor.by, now: parts.clock.now() });
    return succeed({ done: true as const });
  });
}

async function personOfLink(
  { access, records }: Pick<ReadTransaction, 'access' | 'records'>,
  link: string,
  now: string,
): Promise<Result<Person, WorkshopFault>> {
  const refused = fail({ code: 'access.link-refused' });
  const credential = await access.credentialByHash('sign-in-link', hashOfSecret(link));
  if (!credential || credential.expiresAt === null || credential.expiresAt <= now) return refused;
  const person = await records.get('person', credential.personId);
  return person?.body.active ? succeed(person) : refused;
}

/** Checks the password of whoever is signed in already; wrong ones count as at the door. */
async function checkOwn(
  parts: AccessParts,
  { person, actor }: Pick<Known, 'person' | 'actor'>,
  password: string,
): Promise<WorkshopFault | undefined> {
  const permission = 'account.own';
  if (!actor.permissions.has(permission)) return { code: 'permission.missing', permission };
  const proven = await checkClaim(parts, { kind: 'password', secret: password, person, asked: person.id });
  if (!proven.ok) return proven.fault;
  await parts.store.write((tx) => forgiveAttempts(tx, proven.value.subject));
  return undefined;
}

async function putPassword(
  tx: Transaction,
  {
    personId,
    secretHash,
    now,
  }: { readonly personId: string; readonly secretHash: string; readonly now: string },
): Promise<void> {
  await tx.access.putCredential({ personId, kind: 'password', secretHash, expiresAt: null });
  await tx.access.revokeSessions({ personId }, now);
  await forgiveAttempts(tx, attemptsOf('password', personId));
}

/** These are no use cases, so they write their own line in the journal: that it was done, and no more. */
const note = (
  { newId }: AccessParts,
  tx: Transaction,
  { useCase, by, now }: { readonly useCase: string; readonly by: string; readonly now: string },
): Promise<void> => tx.journal.append({ id: newId(), at: now, by, useCase, input: {}, touched: [] });
