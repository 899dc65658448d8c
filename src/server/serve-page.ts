import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { answerNothingHere } from './problem-details.js';

/** Serves the built page from its folder. An address that is no file but that a browser opens as a page (`/plan`) gets
 * the page, which finds its way from there; anything else is not found. */
export function servePage(server: FastifyInstance, webRoot: string): void {
  const isBuilt = existsSync(join(webRoot, 'index.html'));
  if (isBuilt) {
    server.register(fastifyStatic, {
      root: webRoot,
      cacheControl: false,
      preCompressed: true,
      setHeaders: (reply, path) => {
        reply.header('cache-control', keptFor(path));
      },
    });
  }
  server.setNotFoundHandler((request, reply) =>
    isBuilt && opensAPage(request) ? reply.sendFile('index.html') : answerNothingHere(request, reply),
  );
}

/** The bundler puts a hash of the content in the names under `assets`, so those never change. */
const keptFor = (path: string): string =>
  /[/\\]assets[/\\]/.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache';

function opensAPage(request: FastifyRequest): boolean {
  const path = request.url.replace(/[?#].*$/, '');
  const asksForAPage = request.headers.accept?.includes('text/html') ?? false;
  return request.method === 'GET' && asksForAPage && !path.startsWith('/api/') && !/\.\w+$/.test(path);
}
