import type {} from '@fastify/cookie';
import type { FastifyReply, FastifyRequest } from 'fastify';

/** The cookies of the way in: who is signed in, and which enrolled device it is. */
export type CookieName = 'tautwork-session' | 'tautwork-device';

/** What a request's cookie holds. */
export const cookieOf = ({ cookies }: FastifyRequest, name: CookieName): string | undefined => cookies[name];

/** How the cookies are sent: no script can read them, no other site can use them, and behind TLS nobody on the way. */
export interface CookieKeeper {
  readonly set: (reply: FastifyReply, name: CookieName, key: string) => void;
  readonly clear: (reply: FastifyReply, name: CookieName) => void;
}

export function cookieKeeper({ secure }: { readonly secure: boolean }): CookieKeeper {
  const guards = { path: '/api', httpOnly: true, sameSite: 'strict', secure } as const;
  const send = (reply: FastifyReply, name: CookieName, key: string, maxAge: number) => {
    reply.setCookie(name, key, { ...guards, maxAge });
  };
  return {
    set: (reply, name, key) => send(reply, name, key, LIVES_S[name]),
    clear: (reply, name) => send(reply, name, '', 0),
  };
}

const DAY_S = 86_400;

/** The server knows when a key ends; the cookie only must not end before. Browsers keep none longer than 400 days. */
const LIVES_S: Readonly<Record<CookieName, number>> = {
  'tautwork-session': 30 * DAY_S,
  'tautwork-device': 400 * DAY_S,
};
