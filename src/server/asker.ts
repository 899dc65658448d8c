import type { FastifyInstance } from 'fastify';
import type { Permission } from '../contract/index.js';
import type { Actor } from '../workshop/index.js';

/** Who stands behind a request, as the way in has made sure. */
export interface Asker {
  readonly actor: Actor;
  /** Who it is at this moment, read again: nobody after a sign-out, a revocation or an expiry; with other permissions
   * after a change of roles. What stays open (live events) asks now and then. */
  readonly again: () => Promise<Actor | undefined>;
}

/**
 * The way in: a plug-in of the API, called on the API's own instance (below `/api/v1`) before any route is made. It
 * puts an `onRequest` hook there that sets `request.asker` (left `undefined` where nobody has signed in; a wrong
 * or forged proof of who asks is thrown as a `Problem`), and adds its own routes (sign-in, sign-out, …). Each route says
 * in its `config` what it asks for: `permission`, or `open: true` for nobody's in particular. A route that says neither is refused
 * when the server starts.
 */
export type WayIn = (api: FastifyInstance) => void | Promise<void>;

declare module 'fastify' {
  interface FastifyRequest {
    asker: Asker | undefined;
  }
  interface FastifyContextConfig {
    /** What the asker must be allowed. */
    readonly permission?: Permission;
    /** For anyone, signed in or not. */
    readonly open?: boolean;
    /** For everyone who is signed in, whatever their roles. */
    readonly signedIn?: boolean;
  }
}
