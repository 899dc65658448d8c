import { describe, expect, it } from 'vitest';
import { Turnstile } from './turnstile.js';

describe('a turnstile', () => {
  it('lets in as many as it has places, and the others in the order in which they came', async () => {
    const turnstile = new Turnstile(2);
    let inside = 0;
    let most = 0;
    const done: number[] = [];
    await Promise.all(
      Array.from({ length: 9 }, (_, index) =>
        turnstile.pass(async () => {
          inside += 1;
          most = Math.max(most, inside);
          await new Promise((resolve) => setImmediate(resolve));
          done.push(index);
          inside -= 1;
        }),
      ),
    );
    expect(most).toBe(2);
    expect(done).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it('frees the place of work that failed', async () => {
    const turnstile = new Turnstile(1);
    const failing = turnstile.pass(async () => {
      throw new Error('no');
    });
    const next = turnstile.pass(async () => 'in');
    await expect(failing).rejects.toThrow('no');
    expect(await next).toBe('in');
    expect(await turnstile.pass(async () => 'again')).toBe('again');
  });
});
