import { describe, expect, it } from 'vitest';
import { SIMULATED_MACHINES, type SimulatedKind } from '../../../core/winding/index.js';
import { advisedDeed, byAdvice, type Deed, lastTurns, practised } from './practice-run.js';

const KINDS = Object.keys(SIMULATED_MACHINES) as SimulatedKind[];
const SEEDS = [3, 17, 40];

describe('practice', () => {
  it.each(KINDS)('on %s comes to its end by the advice, with most of the run good', (kind) => {
    for (const seed of SEEDS) {
      const { strings, isStopped, goodShares } = byAdvice({ kind, seed });
      const { positions } = SIMULATED_MACHINES[kind];
      expect(strings).toBeGreaterThanOrEqual(positions);
      expect(strings).toBeLessThanOrEqual(13 * positions);
      expect(goodShares).toHaveLength(positions);
      if (!isStopped) for (const share of goodShares) expect(share).toBeGreaterThan(0.75);
    }
  });

  it.each(KINDS)('on %s does the same again for the same deeds, so that the last can be undone', (kind) => {
    const run = { kind, seed: 9 };
    const deeds: Deed[] = [];
    for (let step = 0; step < 3; step++) {
      const next = advisedDeed(practised(run, deeds));
      if (next) deeds.push(next);
    }
    const before = practised(run, deeds.slice(0, -1));
    const after = practised(run, deeds);
    expect(after.strings.slice(0, before.strings.length - 1)).toEqual(before.strings.slice(0, -1));
    expect(practised(run, deeds)).toEqual(after);
  });

  it('has positions that are dialled in apart', () => {
    const run = { kind: 'servo-two-positions', seed: 5 } as const;
    const first: Deed = { kind: 'string', position: 1, setting: 30, setBy: 'advice' };
    const { advices, standsAt, strings } = practised(run, [first]);
    expect(standsAt).toEqual([undefined, 30]);
    expect(advices[0]!.decision.kind).toBe('start');
    expect(advices[1]!.decision.kind).not.toBe('start');
    expect(strings.map(({ position }) => position)).toEqual([1]);
  });

  it('takes a setting of the winder’s own for what it is, and the advice goes on from there', () => {
    const run = { kind: 'new-servo', seed: 5 } as const;
    const own: Deed = { kind: 'string', position: 0, setting: 34.5, setBy: 'override' };
    const { standsAt, strings, advices } = practised(run, [own]);
    expect(standsAt).toEqual([34.5]);
    expect(strings[0]).toMatchObject({ setting: 34.5, setBy: 'override' });
    const { decision } = advices[0]!;
    if (decision.kind === 'adjust') expect(decision.move.to - decision.move.by).toBeCloseTo(34.5, 9);
  });

  it('turns the knob once more where the run may go after that', () => {
    const ends = SEEDS.flatMap((seed) =>
      KINDS.map((kind) => {
        const deeds: Deed[] = [];
        for (;;) {
          const next = advisedDeed(practised({ kind, seed }, deeds));
          if (!next) return practised({ kind, seed }, deeds);
          deeds.push(next);
        }
      }),
    );
    const turned = ends.filter((end) => lastTurns(end).length > 0);
    expect(turned.length).toBeGreaterThan(0);
    for (const end of turned)
      for (const turn of lastTurns(end)) expect(turn).toMatchObject({ kind: 'set', setBy: 'advice' });
  });
});
