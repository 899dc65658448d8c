import { describe, expect, it } from 'vitest';
import { BENCH, bronze36, PLAIN_12, specOf } from '../../../../test/fixtures/winders.js';
import type { CuttingBench } from '../machine.js';
import { setUp } from '../set-up.js';
import { endsByCertificate } from './by-certificate.js';
import { coreEndSheet } from './core-end-work.js';
import { judgeEndCheck } from './end-check.js';
import { impossibleReading, possibleReading } from './end-check-limits.js';
import type { EndSheet } from './end-sheet.js';
import { endWireM } from './end-wire.js';
import { pullsOf, standingChecks } from './standing-checks.js';
import { twistsWanted } from './twists-wanted.js';

const MAKER: CuttingBench = {
  ...BENCH,
  ends: {
    makes: 'ball',
    twists: { least: 4, most: 12 },
    tailM: { least: 0, most: 0.01 },
    cutM: { least: 0.3, most: 1.3 },
  },
};

function sheetOf(changes: Partial<Parameters<typeof coreEndSheet>[0]> = {}): EndSheet {
  const sheet = coreEndSheet({
    bench: MAKER,
    recipe: PLAIN_12,
    spec: specOf(PLAIN_12),
    quantity: 40,
    ...changes,
  });
  if (!sheet.ok) throw new Error(sheet.fault.map(({ code }) => code).join());
  return sheet.value;
}

describe('the short sheet of a bench', () => {
  it('cuts the length over all, what the end takes and what is held, and says what wire that is', () => {
    const { cut, wireM, wireKg } = sheetOf();
    expect(cut.lengthM).toBeCloseTo(cut.lengthOverAllM + cut.endM + cut.tailM, 12);
    expect(wireM).toBeCloseTo(40 * 1.1, 12);
    // 12 thou of steel: 0.5728 g/m by pi/4 d^2 rho at 7850 kg/m3.
    expect(wireKg).toBeCloseTo(44 * 0.5728e-3, 5);
    expect(cut.endNeedsM).toBeLessThan(cut.endM);
  });

  it('is the same in the set-up of a plain string', () => {
    const made = setUp({
      lotId: 'lot',
      machine: MAKER,
      recipe: PLAIN_12,
      spec: specOf(PLAIN_12),
      quantity: 40,
    });
    expect(made.ok && made.value.ends).toEqual(sheetOf());
  });

  it('ends the cores of wound strings too, by the core and not by the gauge', () => {
    const recipe = bronze36('hex');
    const sheet = sheetOf({ recipe, spec: specOf(recipe) });
    expect(sheet).toMatchObject({ of: 'core', wireId: 'core-hex-16', shape: 'hex', end: 'ball' });
    expect(sheet.cautions).not.toContain('rotating-spindle');
    expect(sheet.cautions).toEqual(expect.arrayContaining(['wire-whip', 'pull-test', 'turning-hook']));
    const flatsM = 16 * 25.4e-6;
    expect(sheet.pull!.areaM2).toBeCloseTo((Math.sqrt(3) / 2) * flatsM ** 2, 14);
  });

  it('pulls to where the elastic limit begins, by the certificate where there is one', () => {
    const { pull } = sheetOf();
    expect(pull).toMatchObject({ share: 0.65, strengthFrom: 'standard', table: 'astm-a228' });
    expect(pull!.proofN).toBeCloseTo(0.65 * pull!.leastBreakingN, 9);
    const certified = { ...PLAIN_12, construction: { ...PLAIN_12.construction } };
    if (certified.construction.kind !== 'plain') throw new Error('a plain string');
    const { wire } = certified.construction;
    const recipe = {
      ...PLAIN_12,
      construction: { kind: 'plain' as const, wire: { ...wire, certifiedStrengthPa: 2.9e9 } },
    };
    const better = sheetOf({ recipe }).pull!;
    expect(better).toMatchObject({ strengthFrom: 'certificate', strengthPa: 2.9e9 });
    expect(better).not.toHaveProperty('table');
    // A certificate that is read off the spool afterwards says the same as one in the recipe.
    expect(endsByCertificate(sheetOf(), 2.9e9).pull).toEqual(better);
  });

  it('is refused where the bench makes no such end, twist or piece', () => {
    const made = coreEndSheet({
      bench: {
        ...MAKER,
        longestStringM: 0.9,
        ends: { ...MAKER.ends!, twists: { least: 1, most: 4 }, cutM: { least: 0.3, most: 1 } },
      },
      recipe: PLAIN_12,
      spec: { ...specOf(PLAIN_12), end: 'loop' },
      quantity: 1,
    });
    expect(made.ok ? [] : made.fault.map(({ code }) => code)).toEqual([
      'winding.string-too-long',
      'winding.end-not-possible',
      'winding.twists-out-of-range',
      'winding.cut-out-of-range',
    ]);
  });

  it('asks nothing of a bench of which nothing is written down', () => {
    expect(coreEndSheet({ bench: BENCH, recipe: PLAIN_12, spec: specOf(PLAIN_12), quantity: 1 }).ok).toBe(
      true,
    );
  });
});

describe('the turns of a twist (common practice, no source)', () => {
  it('are fewer in thicker wire, within what friction and bending allow', () => {
    const sizes = [8, 10, 12, 16, 20, 26].map((thou) => twistsWanted(thou * 25.4e-6));
    const wanted = sizes.map((each) => each.wanted);
    expect(wanted).toEqual([...wanted].sort((a, b) => b - a));
    expect(Math.max(...wanted)).toBe(9);
    expect(Math.min(...wanted)).toBe(5);
    for (const { least, most, wanted: turns } of sizes) {
      expect(least).toBeGreaterThanOrEqual(5);
      expect(turns).toBeGreaterThanOrEqual(least);
      expect(most).toBe(turns + 1);
    }
  });

  it('take more wire the more there are, and a loop more than a ball', () => {
    const end = { sizeM: 0.3e-3, end: 'ball', twists: 7 } as const;
    const turnM = endWireM({ ...end, twists: 8 }) - endWireM(end);
    // A turn of touching helix about a wire of its own size: sqrt((2 pi)^2 + 1) = 6.362 diameters.
    expect(turnM / 0.3e-3).toBeCloseTo(6.3623, 3);
    expect(endWireM({ ...end, end: 'loop' })).toBeGreaterThan(endWireM(end));
  });
});

describe('what is found of an end', () => {
  const sheet = sheetOf();
  const { wanted, most } = sheet.twists;

  it('is judged thing by thing, and only what was looked at', () => {
    expect(judgeEndCheck({ twists: wanted, tailM: 0.0008 }, sheet)).toEqual([
      { thing: 'twists', verdict: 'good' },
      { thing: 'tail', verdict: 'good' },
    ]);
    expect(
      judgeEndCheck({ lengthM: 1.004, twists: most + 1, tailM: 0.002, seat: 'crooked' }, sheet).map(
        ({ verdict }) => verdict,
      ),
    ).toEqual(['failed', 'failed', 'failed', 'failed']);
    expect(judgeEndCheck({ lengthM: 1.003 }, sheet)).toEqual([{ thing: 'length', verdict: 'good' }]);
  });

  it('is good where a pull reached the proof force, failed where it gave way, unknown where it was let go', () => {
    const at = (share: number, came: 'held' | 'slipped') =>
      judgeEndCheck({ pull: { forceN: share * sheet.pull!.proofN, came } }, sheet)[0]?.verdict;
    expect(at(1, 'held')).toBe('good');
    expect(at(1.1, 'slipped')).toBe('good');
    expect(at(0.9, 'slipped')).toBe('failed');
    expect(at(0.9, 'held')).toBe('short');
  });

  it('cannot be nonsense, and what it can be is said before', () => {
    const piece = { lengthM: 1, leastBreakingN: 190 };
    expect(impossibleReading({ twists: 9, pull: { forceN: 130, came: 'held' } }, piece)).toBeUndefined();
    expect(impossibleReading({ pull: { forceN: 1300, came: 'held' } }, piece)).toEqual({
      code: 'end-check.impossible',
      thing: 'pull',
      value: 1300,
      ...possibleReading('pull', piece),
    });
    expect(impossibleReading({ tailM: 0.8 }, piece)).toMatchObject({ thing: 'tail', most: 0.05 });
    expect(impossibleReading({ twists: Number.NaN }, piece)).toMatchObject({ thing: 'twists' });
  });

  it('stands until a later entry takes its place or takes it back', () => {
    const row = (id: string, changes: object = {}) => ({
      id,
      insteadOf: null,
      leastBreakingN: 100,
      pull: { forceN: 65, came: 'held' as const },
      ...changes,
    });
    const rows = [
      row('a'),
      row('b', { insteadOf: 'a', pull: { forceN: 66, came: 'held' } }),
      row('c'),
      { id: 'd', insteadOf: 'c', leastBreakingN: 100 },
      row('e', { leastBreakingN: null }),
    ];
    expect(standingChecks(rows).map(({ id }) => id)).toEqual(['b', 'e']);
    expect(pullsOf(rows)).toEqual([{ forceN: 66, came: 'held', leastBreakingN: 100 }]);
  });
});
