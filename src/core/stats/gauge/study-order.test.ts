import { describe, expect, it } from 'vitest';
import { seededChance } from '../../foundation/index.js';
import { studyOrder } from './study-order.js';

describe('the order of a gauge study', () => {
  const study = { parts: ['a', 'b', 'c', 'd'], persons: ['one', 'two'], trials: 3 };

  it('has every part of every person once in every trial', () => {
    const steps = studyOrder(study, seededChance(1)).map(
      ({ person, part, trial }) => `${person} ${part} ${trial}`,
    );
    expect(new Set(steps).size).toBe(24);
    expect(steps).toHaveLength(24);
  });

  it('never gives a person the same part twice in a row', () => {
    for (let seed = 0; seed < 200; seed++)
      for (const person of study.persons) {
        const parts = studyOrder(study, seededChance(seed))
          .filter((step) => step.person === person)
          .map(({ part }) => part);
        expect(parts.some((part, at) => part === parts[at - 1])).toBe(false);
      }
  });

  it('is another in every trial, and the same for the same seed', () => {
    const steps = studyOrder(study, seededChance(3));
    expect(steps).toEqual(studyOrder(study, seededChance(3)));
    const orders = [1, 2, 3].map((trial) =>
      steps.filter((step) => step.person === 'one' && step.trial === trial).map(({ part }) => part),
    );
    expect(new Set(orders.map(String)).size).toBeGreaterThan(1);
  });
});
