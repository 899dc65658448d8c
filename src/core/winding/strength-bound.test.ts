import { describe, expect, it } from 'vitest';
import { bronze36 } from '../../../test/fixtures/winders.js';
import { stringBody } from '../string/index.js';
import { setPoint } from './set-point.js';
import { coreBound, wrapBound } from './strength-bound.js';

describe('how hard strength lets a wire be pulled', () => {
  it('shows its arithmetic: share times strength times area', () => {
    const body = stringBody(bronze36('hex').construction);
    if (!body.ok) throw new Error(body.fault.code);
    const core = coreBound(body.value)!;
    const wrap = wrapBound({ wireDiameterM: 0.254e-3, alloy: 'phosphor-bronze', gap: 0 })!;
    for (const bound of [core, wrap]) {
      expect(bound.upperN).toBeCloseTo(bound.share * bound.strengthPa * bound.areaM2, 9);
      expect(bound.sources.length).toBeGreaterThan(0);
    }
    expect(core.upperN).toBeCloseTo(0.65 * body.value.breakingLoadN!, 9);
  });

  it('is that of the round wire for wrap that was rolled flat', () => {
    const round = wrapBound({ wireDiameterM: 0.3e-3, alloy: 'pure-nickel', gap: 0 });
    const flat = wrapBound({ wireDiameterM: 0.3e-3, alloy: 'pure-nickel', gap: 0, rolledThicknessM: 0.2e-3 });
    expect(flat).toEqual(round);
  });
});

describe('a tension to set', () => {
  const bound = wrapBound({ wireDiameterM: 0.254e-3, alloy: 'phosphor-bronze', gap: 0 })!;

  it('is never a value without a record', () => {
    const point = setPoint(undefined, bound);
    expect(point).not.toHaveProperty('value');
    expect(point).toMatchObject({ kind: 'no-record', upper: bound.upperN });
    expect(setPoint(undefined, undefined)).toEqual({ kind: 'unknown' });
  });

  it('stands beside what the wire bears where there is a record', () => {
    const point = setPoint({ value: bound.upperN / 2, runs: 3 }, bound);
    expect(point).toMatchObject({ kind: 'from-record', runs: 3, shareOfBreaking: expect.closeTo(0.5, 12) });
  });

  it('shows a record that the strength table contradicts', () => {
    const point = setPoint({ value: 2 * bound.upperN, runs: 1 }, bound);
    expect(point).toMatchObject({ shareOfBreaking: expect.closeTo(2, 12) });
  });
});
