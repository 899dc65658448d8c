import fastify from 'fastify';
import { describe, expect, it } from 'vitest';
import { openServer } from './open-server.js';

describe('an open server', () => {
  it('answers on loopback, gives way where the port is taken, and lets go when closed', async () => {
    const first = await openServer(
      fastify().get('/', () => 'first'),
      0,
    );
    const second = await openServer(
      fastify({ forceCloseConnections: true }).get('/', () => 'second'),
      first.port,
    );
    expect(first.url).toBe(`http://127.0.0.1:${first.port}/`);
    expect(second.port).not.toBe(first.port);
    expect(await (await fetch(first.url)).text()).toBe('first');
    expect(await (await fetch(second.url)).text()).toBe('second');
    await Promise.all([first.close(), second.close()]);
    await expect(fetch(second.url)).rejects.toThrow();
  });

  it('says so where the port may not be used at all', async () => {
    await expect(openServer(fastify(), 70_000)).rejects.toThrow(/port/i);
  });
});
