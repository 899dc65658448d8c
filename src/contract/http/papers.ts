import type { Permission } from '../permissions.js';

/** What can be fetched to be printed, as PDF, by the name of its path below `/papers`. */
export const PAPERS = {
  'day-plan': paper('The plan of each machine, late orders, wire to pull and costs of a day, as PDF.'),
  'set-up-sheets': paper('A set-up sheet for every run that starts on a day, or for one lot, as PDF.'),
  'packing-roll': paper('The walk past the bins and each set of a day, as PDF.'),
  labels: paper('A label for every set of a day, as PDF.'),
} as const;

export type PaperName = keyof typeof PAPERS;

interface Paper {
  readonly summary: string;
  readonly permission: Permission;
}

function paper(summary: string): Paper {
  return { summary, permission: 'plan.read' };
}
