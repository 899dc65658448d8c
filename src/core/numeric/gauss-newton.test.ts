import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gaussNewton } from './gauss-newton.js';

describe('a least-squares fit by Gauss and Newton', () => {
  it('finds the parameters that data without noise were made with', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        (size, rate) => {
          const times = [0, 0.25, 0.5, 0.75, 1, 1.5, 2];
          const fit = gaussNewton({
            residuals: ([a = 0, b = 0]) =>
              times.map((t) => a * Math.exp(-b * t) - size * Math.exp(-rate * t)),
            start: [1, 1],
          });
          expect(fit.converged).toBe(true);
          expect(fit.parameters[0]).toBeCloseTo(size, 8);
          expect(fit.parameters[1]).toBeCloseTo(rate, 8);
          expect(fit.sumOfSquares).toBeLessThan(1e-16);
        },
      ),
    );
  });

  it('never ends worse than it began', () => {
    // From far away a full step overshoots by orders of magnitude.
    const residuals = ([x = 0]: readonly number[]) => [Math.atan(x), 0.01 * (x - 1)];
    const fit = gaussNewton({ residuals, start: [20] });
    expect(fit.converged).toBe(true);
    expect(fit.sumOfSquares).toBeLessThan(residuals([20])[0]! ** 2);
    expect(fit.parameters[0]).toBeCloseTo(0.0001, 6);
  });

  it('may start at zero where the scale of the parameters is told', () => {
    const fit = gaussNewton({
      residuals: ([a = 0, b = 0]) => [a - 0.002, b + 0.0003, (a + b) * 1000 - 1.7],
      start: [0, 0],
      scales: [0.001, 0.001],
    });
    expect(fit.converged).toBe(true);
    expect(fit.parameters[0]).toBeCloseTo(0.002, 12);
    expect(fit.parameters[1]).toBeCloseTo(-0.0003, 12);
  });

  it('says so where the data do not determine the parameters', () => {
    const fit = gaussNewton({
      residuals: ([a = 0, b = 0]) => [a + b - 1, 2 * (a + b) - 2.5, a + b],
      start: [0, 0],
    });
    expect(fit.converged).toBe(false);
  });
});
