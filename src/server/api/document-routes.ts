import type { FastifyInstance } from 'fastify';
import { type ApiDocument, apiPage } from './api-page.js';
import { PAGE_STYLE } from './page-style.js';

/** The API told to programs and to people. Open to anyone: it says what can be asked, and nothing of the shop. */
export function documentRoutes(api: FastifyInstance): void {
  const open = { config: { open: true }, schema: { hide: true } } as const;
  api.get('/openapi.json', open, (_request, reply) => reply.type('application/json').send(document(api)));
  api.get('/', open, (_request, reply) =>
    reply.type('text/html; charset=utf-8').send(apiPage(document(api) as unknown as ApiDocument)),
  );
  api.get('/page.css', open, (_request, reply) => reply.type('text/css; charset=utf-8').send(PAGE_STYLE));
}

/** Made when first asked for, and kept by the library. */
const document = (api: FastifyInstance) => api.swagger();
