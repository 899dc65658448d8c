import { describe, expect, it } from 'vitest';
import { bronze36 } from '../../../test/fixtures/winders.js';
import { stringBody } from '../string/index.js';
import type { NearFigure } from './near-runs.js';
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

  const near = (value: number, weight: number): NearFigure => ({
    run: { machineId: 'servo-1', core: { shape: 'hex', sizeM: 4e-4 }, layers: [] },
    value,
    weight,
  });
  const runs = (count: number, value: number) => Array.from({ length: count }, () => near(value, 1));

  it('is a guess without a near run: a cautious start well below the bound, and called so', () => {
    const point = setPoint([], bound);
    expect(point).not.toHaveProperty('value');
    expect(point).toMatchObject({ kind: 'no-record', upper: bound.upperN, startShare: 1, leanedOn: [] });
    if (point.kind !== 'no-record') throw new Error(point.kind);
    expect(point.start).toBeCloseTo(0.325 * bound.upperN, 9);
    expect(setPoint([], undefined)).toEqual({ kind: 'unknown' });
    // One run that is hardly near moves the guess; it stays one.
    const moved = setPoint([near(bound.upperN / 2, 0.3)], bound);
    expect(moved).toMatchObject({ kind: 'no-record', runs: 1 });
    // Its interval ends where the wire does.
    expect(setPoint([near(0.9 * bound.upperN, 0.4)], bound)).toMatchObject({ high: bound.upperN });
  });

  it('speaks in the number of the machine’s own scale too, where that reaches it', () => {
    const scale = [
      { dial: 0, pullN: 0.1 },
      { dial: 10, pullN: 20 },
    ];
    const point = setPoint(runs(200, 8), bound, scale);
    expect(point).toMatchObject({ dial: expect.closeTo((10 * 7.9) / 19.9, 1) });
    expect(setPoint(runs(3, 8), bound, [])).not.toHaveProperty('dial');
  });

  it('stands beside what the wire bears where there is a record', () => {
    const point = setPoint(runs(300, bound.upperN / 2), bound);
    expect(point).toMatchObject({ kind: 'from-record', runs: 300, shareOfBreaking: expect.closeTo(0.5, 3) });
  });

  it('shows a record that the strength table contradicts', () => {
    const point = setPoint(runs(300, 2 * bound.upperN), bound);
    expect(point).toMatchObject({ shareOfBreaking: expect.closeTo(2, 1) });
  });
});
