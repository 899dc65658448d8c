export type { QueuedEntry } from './entry.js';
export { isOf } from './entry.js';
export { OutboxBar } from './outbox-bar.js';
export { OutboxProvider } from './outbox-provider.js';
export { type ToTakeBack, takenBackIn, useTakeBack } from './take-back.js';
export { UndoTouch } from './undo-touch.js';
export { useComing, useOutbox, useQueued } from './use-outbox.js';
