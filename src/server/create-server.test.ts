import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Day, Shop } from '../core/day/index.js';
import { createServer } from './create-server.js';

const PAGE = '<!doctype html><title>Tautwork</title>';
const day = { shop: { name: 'Invented' }, orders: [] } as unknown as Day;
const shop = { name: 'Invented', recipes: [] } as unknown as Shop;

describe('the server', () => {
  let webRoot: string;
  let server: FastifyInstance;
  let asked: number;

  beforeEach(() => {
    webRoot = mkdtempSync(join(tmpdir(), 'tautwork-page-'));
    mkdirSync(join(webRoot, 'assets'));
    writeFileSync(join(webRoot, 'index.html'), PAGE);
    writeFileSync(join(webRoot, 'assets', 'page-1a2b.js'), 'export {};');
    asked = 0;
    server = createServer({
      webRoot,
      dayOf: async () => {
        asked += 1;
        if (asked === 1) throw new Error('spool drawer /secret/path is locked');
        return day;
      },
      shopOf: async () => shop,
    });
  });

  afterEach(async () => {
    await server.close();
    rmSync(webRoot, { recursive: true, force: true });
  });

  const browse = (url: string) => server.inject({ url, headers: { accept: 'text/html,*/*' } });

  it('shows a sign of life', async () => {
    const answer = await server.inject('/healthz');
    expect([answer.statusCode, answer.json()]).toEqual([200, { status: 'ok' }]);
  });

  it('works the demo day out once, however many ask, and tries again after a failure', async () => {
    const first = await server.inject('/api/v1/demo/day');
    expect(first.statusCode).toBe(500);
    const both = await Promise.all([server.inject('/api/v1/demo/day'), server.inject('/api/v1/demo/day')]);
    expect(both.map((answer) => answer.json())).toEqual([day, day]);
    expect(asked).toBe(2);
  });

  it('gives the shop that the day was worked out for', async () => {
    const answer = await server.inject('/api/v1/demo/shop');
    expect([answer.statusCode, answer.json()]).toEqual([200, shop]);
    expect(answer.headers['cache-control']).toBe('no-cache');
  });

  it('keeps the inner words of its own faults to itself', async () => {
    const answer = await server.inject('/api/v1/demo/day');
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
    const bare = createServer({
      webRoot: join(webRoot, 'none'),
      dayOf: async () => day,
      shopOf: async () => shop,
    });
    const answer = await bare.inject({ url: '/', headers: { accept: 'text/html' } });
    expect(answer.statusCode).toBe(404);
    expect(answer.json().status).toBe(404);
    await bare.close();
  });
});
