import { v7 } from 'uuid';

/** A new UUID of version 7, which sorts by when it was made. */
export const freshId = (): string => v7();
