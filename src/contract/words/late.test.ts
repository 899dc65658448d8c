import { describe, expect, it } from 'vitest';
import { type CalendarDate, calendarDate } from '../../core/foundation/index.js';
import { lateInWords } from './late.js';

const machineName = (id: string): string => (id === 'm1' ? 'Old gear winder' : id);

describe('why an order is late', () => {
  it('it may have been late before the day began', () => {
    const due = calendarDate('2026-04-13') as CalendarDate;
    expect(lateInWords({ kind: 'due-already-past', due }, machineName)).toBe(
      'It was due on Mon 13 Apr 2026, before this day began.',
    );
  });

  it('a full machine is called by its name', () => {
    expect(lateInWords({ kind: 'machine-full', machineId: 'm1', lotId: 'L-3' }, machineName)).toBe(
      'Old gear winder has no room for L-3 before the due date.',
    );
  });

  it('short notice says how much work there is', () => {
    expect(lateInWords({ kind: 'too-short-notice', lotId: 'L-3', minutesNeeded: 95.4 }, machineName)).toBe(
      'L-3 needs 1 h 35 min of work, more than is left before the due date.',
    );
  });

  it('a run that was settled before is called as the floor calls it', () => {
    expect(
      lateInWords({ kind: 'waits-for-run', machineId: 'm1', run: '2026-04-13 run 2' }, machineName),
    ).toBe('It waits for 2026-04-13 run 2 on Old gear winder, which ends after the due date.');
  });
});
