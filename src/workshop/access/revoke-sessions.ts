import { revokeSession, revokeSessions } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { needRecord } from '../record-change.js';
import { type Actor, useCase } from '../use-case.js';

/** Signs one session out. */
export const revokeSessionCase = useCase(revokeSession, async ({ tx, actor, now }, { id }) => {
  const session = await tx.access.session(id);
  // Whoever may not touch it is not told that it is there.
  if (!session || !maySignOut(actor, session.personId))
    return fail({ code: 'record.missing', kind: 'session', id });
  if (session.revokedAt === null) await tx.access.revokeSession(id, now);
  return succeed({ id, revokedAt: session.revokedAt ?? now });
});

/** Signs a person out everywhere. */
export const revokeSessionsCase = useCase(revokeSessions, async ({ tx, actor, now }, { personId }) => {
  if (!maySignOut(actor, personId)) return fail({ code: 'permission.missing', permission: 'people.manage' });
  await needRecord(tx, 'person', personId);
  await tx.access.revokeSessions({ personId }, now);
  return succeed({ personId, revokedAt: now });
});

const maySignOut = ({ personId: own, permissions }: Actor, personId: string): boolean =>
  own === personId || permissions.has('people.manage');
