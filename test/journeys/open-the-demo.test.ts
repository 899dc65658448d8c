import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { Day } from '../../src/core/day/index.js';
import { startServer } from '../../src/server/index.js';
import { demoFile } from '../../src/workshop/index.js';

it('the server that npm start opens gives a day that accounts for every line of the demo orders', async () => {
  const server = await startServer({ port: 0 });
  try {
    const answer = await fetch(new URL('/api/v1/demo/day', server.url));
    expect(answer.status).toBe(200);
    const day = (await answer.json()) as Day;
    const lines = readFileSync(demoFile('orders.csv'), 'utf8').trim().split('\n').length - 1;
    const accounted = new Set([...day.orders, ...day.faults].map(({ line }) => line));
    expect(lines).toBeGreaterThan(100);
    expect(accounted.size).toBe(lines);
    expect(day.shop.invented).toBe(true);
  } finally {
    await server.close();
  }
});
