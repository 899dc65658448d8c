import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { livesPage } from '../../scripts/lives-page.js';
import { RECORD_KINDS } from '../../src/contract/index.js';
import { type Lifecycle, stepsFrom, takeStep } from '../../src/core/foundation/index.js';
import { LIVES } from '../../src/core/stock/index.js';
import { houseFile } from './the-house.js';

const lives: readonly Lifecycle[] = Object.values(LIVES);

const statesOf = (life: Lifecycle): readonly string[] => [
  ...new Set([life.initial, ...Object.values(life.steps).flatMap(({ from, to }) => [...from, to])]),
];

describe('the page of lives in the handbook', () => {
  it('is drawn from the program as it stands', () => {
    const remedy = 'out of date: run `node scripts/draw-lives.mjs`';
    expect(houseFile('docs/handbook/lives.md').text, remedy).toBe(livesPage());
  });

  it('draws every step as an arrow and lists it', () => {
    const page = livesPage();
    for (const { steps } of lives) {
      for (const [step, { from, to }] of Object.entries(steps)) {
        for (const state of from) {
          expect(page).toContain(`${state.replaceAll('-', '_')} --> ${to.replaceAll('-', '_')}: ${step}\n`);
          expect(page).toMatch(new RegExp(`^\\| ${state} \\| .*${step} \\(to ${to}\\)`, 'm'));
        }
      }
    }
  });
});

describe('a life', () => {
  it.each(lives)('of a $of is that of a kind of record, and all of it can be reached', (life) => {
    expect(LIVES).toHaveProperty(life.of);
    expect(Object.keys(RECORD_KINDS)).toContain(life.of);
    const reached = new Set<string>([life.initial]);
    for (const state of reached) {
      for (const step of stepsFrom(life, state)) reached.add(life.steps[step]!.to);
    }
    expect([...reached].sort()).toEqual([...statesOf(life)].sort());
  });

  it('goes from step to legal step, and refuses every other with the legal ones named', () => {
    const life = fc.constantFrom(...lives);
    const walk = life.chain((of) =>
      fc.tuple(fc.constant(of), fc.array(fc.constantFrom(...Object.keys(of.steps)), { maxLength: 12 })),
    );
    fc.assert(
      fc.property(walk, ([of, steps]) => {
        let state = of.initial;
        for (const step of steps) {
          const legal = Object.entries(of.steps).flatMap(([name, { from }]) =>
            from.includes(state) ? [name] : [],
          );
          const taken = takeStep(of, state, step);
          if (legal.includes(step)) expect(taken).toEqual({ ok: true, value: of.steps[step]!.to });
          else {
            expect(taken).toEqual({
              ok: false,
              fault: { code: 'lifecycle.step-refused', of: of.of, state, step, allowed: legal },
            });
          }
          if (taken.ok) state = taken.value;
        }
      }),
    );
  });
});
