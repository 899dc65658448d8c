import type { WorkshopFault } from './use-case.js';

/**
 * Thrown by the parts of a use case that cannot go on (a record that is not there, a step that may not be taken),
 * so that the story above them reads straight. `perform` turns it back into the fault it carries.
 */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  constructor(readonly fault: WorkshopFault) {
    super(fault.code);
  }
}

/** Refuses, with everything that was done so far undone. */
export function refuse(fault: WorkshopFault): never {
  throw new Refusal(fault);
}
