import { DEMO_PASSWORD, DEMO_PEOPLE, DEMO_PIN } from '../../../demo/index.js';
import type { Role } from '../../contract/index.js';
import type { Store } from '../../store/index.js';
import type { SlowHash } from '../access/slow-hash.js';
import { lastWritten } from '../clock.js';
import { newId } from '../new-id.js';

/** How an invented person signs in. */
export interface DemoSignIn {
  readonly name: string;
  readonly roles: readonly Role[];
  readonly password: string;
  readonly pin: string;
}

/**
 * Lets anybody sign in as one of the invented people, with a password and a PIN that stand in this package for all to
 * read: for trying out each role. Only people of that name are let in, only where the shop says of itself that it is
 * invented, and only who has no password yet. Gives who can sign in; nobody in any other shop.
 */
export async function letDemoPeopleIn(store: Store, slowHash: SlowHash): Promise<readonly DemoSignIn[]> {
  // One hash for all: the secrets are no secrets, and eight times the wait would guard nothing.
  const hashes = { password: await slowHash.hash(DEMO_PASSWORD), pin: await slowHash.hash(DEMO_PIN) };
  return store.write(async (tx) => {
    const [settled] = await tx.records.all('settings');
    if (!settled?.body.invented) return [];
    const now = await lastWritten(tx);
    const letIn: DemoSignIn[] = [];
    for (const { id, version, body } of await tx.records.all('person')) {
      const { name, roles } = body;
      if (!NAMES.has(name) || (await tx.access.credential(id, 'password'))) continue;
      for (const kind of ['password', 'pin'] as const)
        await tx.access.putCredential({ personId: id, kind, secretHash: hashes[kind], expiresAt: null });
      const touched = [{ kind: 'person', id, version }];
      const useCase = 'let-demo-people-in';
      await tx.journal.append({
        id: newId(),
        at: now,
        by: 'console',
        useCase,
        input: { personId: id },
        touched,
      });
      letIn.push({ name, roles, password: DEMO_PASSWORD, pin: DEMO_PIN });
    }
    return letIn;
  });
}

const NAMES: ReadonlySet<string> = new Set(Object.values(DEMO_PEOPLE).map(({ name }) => name));
