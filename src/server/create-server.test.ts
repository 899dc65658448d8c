import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openStore, type Store } from '../workshop/index.js';
import type { WayIn } from './asker.js';
import { createServer } from './create-server.js';

const PAGE = '<!doctype html><title>Tautwork</title>';

/** Lets anyone in, to a room whose floor gives way. */
const wayIn: WayIn = (api) => {
  api.get('/breaks', { config: { open: true } }, async () => {
    throw new Error('spool drawer /secret/path is locked');
  });
};

describe('the server', () => {
  let webRoot: string;
  let server: FastifyInstance;
  let store: Store;

  beforeEach(async () => {
    webRoot = mkdtempSync(join(tmpdir(), 'tautwork-page-'));
    mkdirSync(join(webRoot, 'assets'));
    writeFileSync(join(webRoot, 'index.html'), PAGE);
    writeFileSync(join(webRoot, 'assets', 'page-1a2b.js'), 'export {};');
    store = await openStore({ file: join(webRoot, 'shop.db') });
    server = createServer({ webRoot, shop: { store, wayIn } });
  });

  afterEach(async () => {
    await server.close();
    await store.close();
    rmSync(webRoot, { recursive: true, force: true });
  });

  const browse = (url: string) => server.inject({ url, headers: { accept: 'text/html,*/*' } });

  it('shows a sign of life', async () => {
    const answer = await server.inject('/healthz');
    expect([answer.statusCode, answer.json()]).toEqual([200, { status: 'ok' }]);
  });

  it('keeps the inner words of its own faults to itself', async () => {
    const answer = await server.inject('/api/v1/breaks');
    expect(answer.statusCode).toBe(500);
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
    expect(answer.json()).toMatchObject({ status: 500, title: 'Internal Server Error' });
    expect(answer.body).not.toContain('secret');
  });

  it('serves the page, also at the addresses that the page itself makes', async () => {
    for (const url of ['/', '/plan', '/sets/six-string?like=10']) {
      const answer = await browse(url);
      expect([answer.statusCode, answer.body]).toEqual([200, PAGE]);
      expect(answer.headers['cache-control']).toBe('no-cache');
    }
  });

  it('lets a browser keep what bears a hash in its name', async () => {
    const answer = await browse('/assets/page-1a2b.js');
    expect(answer.statusCode).toBe(200);
    expect(answer.headers['cache-control']).toContain('immutable');
  });

  it.each([
    ['/api/v1/no-such-thing', 'text/html'],
    ['/plan', 'application/json'],
    ['/assets/gone.js', 'text/html'],
    ['/%2e%2e/package.json', 'text/html'],
  ])('says with problem details that nothing stands at %s (asked for %s)', async (url, accept) => {
    const answer = await server.inject({ url, headers: { accept } });
    expect(answer.statusCode).toBe(404);
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
    expect(answer.json()).toMatchObject({ type: '/api/v1/#http.not-found', title: 'Not Found', status: 404 });
  });

  it('answers an address that cannot be read as a fault of the asker', async () => {
    const answer = await server.inject('/%');
    expect(answer.statusCode).toBe(400);
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
  });

  it.each(['/', '/healthz', '/api/v1/no-such-thing', '/%'])('guards what it answers at %s', async (url) => {
    const { headers } = await browse(url);
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).not.toContain('unsafe');
    expect(policy).not.toContain('upgrade-insecure-requests');
    expect(headers['x-content-type-options']).toBe('nosniff');
  });

  it('says so where the page was never built', async () => {
    const bare = createServer({ webRoot: join(webRoot, 'none'), shop: { store, wayIn } });
    const answer = await bare.inject({ url: '/', headers: { accept: 'text/html' } });
    expect(answer.statusCode).toBe(404);
    expect(answer.json().status).toBe(404);
    await bare.close();
  });
});
