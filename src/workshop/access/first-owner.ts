import { fail, type Result, succeed } from '../../core/foundation/index.js';
import type { Transaction } from '../../store/index.js';
import type { WorkshopFault } from '../use-case.js';
import type { AccessParts } from './access-parts.js';
import { isOwner } from './people.js';
import { type Person, personNamed } from './person-names.js';
import { newSignInLink, type SignInLink } from './sign-in-links.js';

/** A link that whoever sits at the server's console may use or hand on. */
export interface ConsoleLink extends SignInLink {
  readonly person: Person;
}

type Parts = Pick<AccessParts, 'store' | 'clock' | 'newId'>;

const FIRST_NAME = 'Owner';

/**
 * Makes sure that somebody can get into the shop: makes the owner where there is nobody at all, and a link where no
 * owner has a password yet. Undefined where an owner can sign in. Ask it at every start: a link that was lost with
 * a closed terminal is replaced by the next.
 */
export const firstOwner = ({ store, clock, newId }: Parts): Promise<ConsoleLink | undefined> =>
  store.write(async (tx) => {
    const now = clock.now();
    const people = await tx.records.all('person');
    const owners = people.filter(({ body }) => isOwner(body));
    const passwords = await Promise.all(owners.map(({ id }) => tx.access.credential(id, 'password')));
    if (passwords.some((password) => password !== undefined)) return undefined;
    // Never a second owner beside people who are there: without an owner among them the console must name one.
    const person = owners[0] ?? (people.length === 0 ? await makeOwner(tx, newId(), now) : undefined);
    return person && consoleLink(tx, { person, id: newId(), now });
  });

/** A new link for the person of that name, or for the first owner: `tautwork sign-in-link`. */
export const consoleSignInLink = (
  { store, clock, newId }: Parts,
  name?: string,
): Promise<Result<ConsoleLink, WorkshopFault>> =>
  store.write(async (tx) => {
    const now = clock.now();
    const people = await tx.records.all('person');
    const person =
      name === undefined ? people.find(({ body }) => isOwner(body)) : await personNamed(tx, name);
    if (!person)
      return fail({
        code: 'access.person-unknown',
        name: name ?? null,
        known: people.map(({ body }) => body.name),
      });
    if (!person.body.active) return fail({ code: 'access.person-inactive', name: person.body.name });
    return succeed(await consoleLink(tx, { person, id: newId(), now }));
  });

const makeOwner = (tx: Transaction, id: string, at: string): Promise<Person> =>
  tx.records.insert('person', { id, body: { name: FIRST_NAME, roles: ['owner'], active: true }, at });

async function consoleLink(
  tx: Transaction,
  { person, id, now }: { readonly person: Person; readonly id: string; readonly now: string },
): Promise<ConsoleLink> {
  const link = await newSignInLink(tx, { personId: person.id, from: 'console', now });
  await tx.journal.append({
    id,
    at: now,
    by: 'console',
    useCase: 'sign-in-link',
    input: { personId: person.id },
    touched: [{ kind: 'person', id: person.id, version: person.version }],
  });
  return { ...link, person };
}
