/** What differs between two set-ups of a machine. */
export type ChangedPart = 'core' | 'wrap' | 'alloy' | 'length';
