import type { LateReason } from '../../core/day/index.js';
import { dateInWords, durationInWords } from './times.js';

/** Why an order will be late, as a sentence. `machineName` gives a machine's name from its id. */
export function lateInWords(reason: LateReason, machineName: (machineId: string) => string): string {
  switch (reason.kind) {
    case 'due-already-past':
      return `It was due on ${dateInWords(reason.due)}, before this day began.`;
    case 'machine-full':
      return `${machineName(reason.machineId)} has no room for ${reason.lotId} before the due date.`;
    case 'too-short-notice':
      return `${reason.lotId} needs ${durationInWords(reason.minutesNeeded)} of work, more than is left before the due date.`;
    case 'waits-for-run':
      return `It waits for ${reason.run} on ${machineName(reason.machineId)}, which ends after the due date.`;
  }
}
