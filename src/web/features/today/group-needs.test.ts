import { describe, expect, it } from 'vitest';
import type { Need } from '../../../contract/index.js';
import { groupNeeds, needKey } from './group-needs.js';

const since = '2027-03-01T08:00:00.000Z';
const request = (requestId: string, urgency: Need['urgency']): Need => ({
  kind: 'request-waiting',
  urgency,
  requestId,
  player: 'Jorla Barleycroft',
  since,
});
const silent: Need = { kind: 'dry-room-silent', urgency: 'soon', room: 'dry room', since };

describe('what needs a person', () => {
  it('stands by urgency and within it by kind, with counts; what nobody needs is left out', () => {
    const groups = groupNeeds([request('a', 'in-time'), silent, request('b', 'soon'), request('c', 'soon')]);
    expect(groups.map(({ urgency, count }) => [urgency, count])).toEqual([
      ['soon', 3],
      ['in-time', 1],
    ]);
    expect(groups[0]?.groups.map(({ kind, needs }) => [kind, needs.map(needKey)])).toEqual([
      ['dry-room-silent', ['dry room']],
      ['request-waiting', ['b', 'c']],
    ]);
    expect(groupNeeds([])).toEqual([]);
  });
});
