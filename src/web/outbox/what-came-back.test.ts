import { describe, expect, it } from 'vitest';
import type { ProblemDetails } from '../../contract/index.js';
import { verdictOn, waitAfter } from './what-came-back.js';

const problem = (status: number, code = 'some.code') => ({ status, code }) as ProblemDetails;

describe('an answer that is no success', () => {
  it('is asked again for by itself where it will pass', () => {
    for (const status of [0, 429, 502, 503, 504]) expect(verdictOn(problem(status))).toBe('again');
    expect(verdictOn(problem(404, 'network.foreign-answer'))).toBe('again');
  });

  it('is for a person where the shop would say the same again', () => {
    for (const status of [400, 403, 404, 409, 412, 422, 500])
      expect(verdictOn(problem(status))).toBe('refused');
  });

  it('waits for someone to sign in where nobody is', () => {
    expect(verdictOn(problem(401))).toBe('sign-in');
  });
});

it('tries come later and later, but at least every half minute', () => {
  expect([1, 2, 3, 4, 5, 6, 20].map(waitAfter)).toEqual([1000, 2000, 4000, 8000, 16_000, 30_000, 30_000]);
});
