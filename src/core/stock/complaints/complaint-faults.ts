/** Faults of strings by what a player notices, in the shop's own codes. The list is closed: what fits none is `other`. */
export const COMPLAINT_FAULTS = [
  'dull',
  'buzzes',
  'out-of-tune',
  'feels-off',
  'wrap-loose',
  'broke-at-ball',
  'broke-in-length',
  'broke',
  'corroded',
  'wrong-string',
  'other',
] as const;
export type ComplaintFault = (typeof COMPLAINT_FAULTS)[number];

/** Codes that were written down before the list was closed. */
const FORMER: Readonly<Record<string, ComplaintFault>> = {
  'loose-wrap': 'wrap-loose',
  'false-pitch': 'out-of-tune',
};

/** The fault that a kept code means: one of the list, a former one, or `other` where it was free words. */
export const complaintFault = (code: string): ComplaintFault =>
  COMPLAINT_FAULTS.find((fault) => fault === code) ?? FORMER[code] ?? 'other';
