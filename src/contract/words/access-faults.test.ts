import { describe, expect, it } from 'vitest';
import { ACCESS_FAULTS } from './access-faults.js';
import { workshopFaultWords } from './workshop-faults.js';

const FACTS = {
  name: 'Wren',
  known: ['Marten', 'Wren'],
  beyond: ['plan.freeze', 'shop.edit'],
  hosts: ['shop.example', '203.0.113.7'],
  host: '0.0.0.0',
  folder: 'certificate',
  lockedUntil: '2027-03-01T08:15:00.000Z',
  expiresAt: '2027-03-01T08:15:00.000Z',
  notAfter: '2027-03-01T08:15:00.000Z',
  because: 'short',
  attemptsLeft: 2,
};

describe('a refusal of the way in', () => {
  it.each(Object.keys(ACCESS_FAULTS))('%s is told in whole sentences, with its facts', (code) => {
    const { what, mend } = workshopFaultWords({ code, ...FACTS });
    for (const sentence of [what, mend]) {
      expect(sentence).toMatch(/^["A-Z0-9].*\.$/s);
      expect(sentence).not.toMatch(/undefined|null|NaN|\[object/);
    }
  });

  it('says until when, by the clock of the world', () => {
    expect(workshopFaultWords({ code: 'access.locked', ...FACTS }).mend).toContain('2027-03-01 08:15 UTC');
  });

  it.each([
    [0, 'No more attempts are free now'],
    [1, 'One more attempt is free'],
    [3, '3 more attempts are free'],
  ])('with %i attempts left says "%s"', (attemptsLeft, words) => {
    const told = workshopFaultWords({ code: 'access.sign-in-refused', with: 'pin', attemptsLeft });
    expect(told.what).toContain('person and PIN');
    expect(told.mend).toContain(words);
  });

  it('lists who there is where a name is unknown, and what to do in an empty shop', () => {
    const code = 'access.person-unknown';
    expect(workshopFaultWords({ code, ...FACTS }).mend).toContain('Marten and Wren');
    expect(workshopFaultWords({ code, name: null, known: [] }).mend).toContain('Start the server');
  });
});
