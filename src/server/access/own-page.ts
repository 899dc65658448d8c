import type { FastifyRequest } from 'fastify';
import { workshopProblem } from '../workshop-problem.js';

const SAFE_METHODS: readonly string[] = ['GET', 'HEAD', 'OPTIONS'];

/**
 * Refuses what a page of another place makes a browser send: browsers say with `Sec-Fetch-Site` and `Origin` where a request
 * comes from. Where a cookie alone proves who asks (`byCookie`), one of them must be there and say that it is our own page;
 * elsewhere they must not say otherwise.
 */
export function refuseForeignPage(
  request: FastifyRequest,
  { byCookie }: { readonly byCookie: boolean },
): void {
  if (SAFE_METHODS.includes(request.method)) return;
  const site = request.headers['sec-fetch-site'];
  const { origin } = request.headers;
  const isOurs =
    (site === undefined || site === 'same-origin') && (origin === undefined || isOrigin(origin, request));
  const isSaid = site !== undefined || origin !== undefined;
  if (!isOurs || (byCookie && !isSaid)) throw workshopProblem({ code: 'access.cross-origin' });
}

/** Refuses a name that the server does not go by: a foreign name that was pointed at this machine would make its page ours. */
export function refuseForeignName({ hostname }: FastifyRequest, names: readonly string[] | undefined): void {
  if (names === undefined || names.includes(bare(hostname))) return;
  throw workshopProblem({ code: 'access.unknown-host', host: hostname });
}

function isOrigin(origin: string, { host }: FastifyRequest): boolean {
  // A page without a place of its own, such as a local file, calls itself `null`.
  return URL.canParse(origin) && new URL(origin).host === host.toLowerCase().replace(/:(80|443)$/, '');
}

const bare = (hostname: string): string => hostname.toLowerCase().replace(/^\[|\]$/g, '');
