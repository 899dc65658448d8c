import { useQueryClient } from '@tanstack/react-query';
import { createContext, type ReactNode, use, useCallback, useEffect, useMemo, useState } from 'react';
import type { Static } from 'typebox';
import type { ACCESS_SCHEMAS, Permission, Role } from '../../contract/index.js';
import { askJson } from './ask-json.js';
import { isNoAnswer } from './client.js';

export type Me = Static<typeof ACCESS_SCHEMAS.me>;
/** A device of the shop, and who may sign in on it with a PIN. */
export type Device = Static<typeof ACCESS_SCHEMAS.thisDevice>;
type Who = Static<typeof ACCESS_SCHEMAS.who>;

/** Who sits before the screen: not known yet, nobody, somebody, or nobody can say because no answer comes. */
export type Standing =
  | { readonly kind: 'asking' }
  | { readonly kind: 'nobody'; readonly device: Device | undefined }
  | { readonly kind: 'no-answer' }
  | { readonly kind: 'somebody'; readonly me: Me; readonly isOnline: boolean };

interface Session {
  readonly standing: Standing;
  /** After signing in by whatever way. */
  readonly entered: () => void;
  readonly signOut: () => Promise<void>;
  readonly ended: () => void;
  readonly askAgain: () => void;
}

const SessionContext = createContext<Session | undefined>(undefined);

/** What the floor needs to go on without a network: who it was. No key is in it; that is the cookie's. */
const KEPT_AS = 'tautwork.who';

export function SessionProvider({ children }: { readonly children: ReactNode }) {
  const queries = useQueryClient();
  const [standing, setStanding] = useState<Standing>({ kind: 'asking' });
  const ask = useCallback(() => {
    void whoAsks().then(setStanding);
  }, []);
  useEffect(ask, [ask]);
  const over = useCallback(() => {
    setStanding({ kind: 'asking' });
    forget();
    queries.clear();
    ask();
  }, [queries, ask]);
  const session = useMemo<Session>(
    () => ({
      standing,
      entered: () => {
        queries.clear();
        ask();
      },
      signOut: async () => {
        // First out of every room, so that none asks for what is no longer to be seen.
        setStanding({ kind: 'asking' });
        await askJson('/sign-out', { method: 'POST', body: {} }).finally(over);
      },
      ended: over,
      askAgain: ask,
    }),
    [standing, queries, ask, over],
  );
  return <SessionContext value={session}>{children}</SessionContext>;
}

async function whoAsks(): Promise<Standing> {
  try {
    const { me, device } = await askJson<Who>('/who');
    if (!me) {
      forget();
      return { kind: 'nobody', device };
    }
    localStorage.setItem(KEPT_AS, JSON.stringify(me));
    return { kind: 'somebody', me, isOnline: true };
  } catch (thrown) {
    const me = isNoAnswer(thrown) ? keptMe() : undefined;
    return me ? { kind: 'somebody', me, isOnline: false } : { kind: 'no-answer' };
  }
}

function keptMe(): Me | undefined {
  const kept = localStorage.getItem(KEPT_AS);
  return kept === null ? undefined : (JSON.parse(kept) as Me);
}

const forget = () => localStorage.removeItem(KEPT_AS);

export function useSession(): Session {
  const session = use(SessionContext);
  if (!session) throw new Error('Broken promise inside Tautwork: a room stands outside of any session');
  return session;
}

/** Who is signed in. Only below the frame, which lets nobody else in. */
export function useMe(): Me {
  const { standing } = useSession();
  if (standing.kind !== 'somebody')
    throw new Error('Broken promise inside Tautwork: nobody is signed in here');
  return standing.me;
}

/** Whether who is signed in may do a thing. */
export function useMay(): (permission: Permission) => boolean {
  const { permissions } = useMe();
  return useCallback((permission) => permissions.includes(permission), [permissions]);
}

/** Whether someone works at the desk: the floor's people see the floor first. */
export const isOfTheDesk = ({ person }: Me): boolean =>
  person.roles.some((role: Role) => role === 'owner' || role === 'adviser');
