import type { WordsOfFault } from './shop-wide-faults.js';

/** What the server refuses before the workshop is asked. */
export const HTTP_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'sign-in.needed': {
    what: 'Nobody is signed in.',
    mend: 'Sign in on the page, or send the header `Authorization: Bearer TOKEN`.',
  },
  'idempotency-key.missing': {
    what: 'Every write needs a header `Idempotency-Key`.',
    mend: 'Make a UUID for this request and send it; keep it to ask again, so that sending twice does it once.',
  },
  'idempotency-key.unreadable': ({ key }) => ({
    what: `The header \`Idempotency-Key\` must be a UUID, and “${key}” is none.`,
    mend: 'Make one with `uuidgen`, or as your language does it.',
  }),
  'version.needed': {
    what: 'This changes a record, and it is not said which version of it you saw.',
    mend: 'Give it as `expectedVersion` in the body, or in the header `If-Match`, so that nothing newer is written over unseen.',
  },
  'version.unreadable': ({ given }) => ({
    what: `\`If-Match\` must be one version in quotation marks; it is ${given}.`,
    mend: 'Send back the `ETag` of the record as it came, such as "3".',
  }),
  'version.contradicts': ({ given, inBody }) => ({
    what: `\`If-Match\` says ${given}, \`expectedVersion\` says ${inBody}.`,
    mend: 'Give the version in one place only.',
  }),
  'version.not-used': {
    what: 'No version is looked at here, so `If-Match` would promise what is not kept.',
    mend: 'Leave the header out.',
  },
  'cursor.unreadable': ({ cursor }) => ({
    what: `No page of this list ended at “${cursor}”.`,
    mend: 'Send the `next` of the page before as it came, or leave `after` out to begin.',
  }),
  'events.unreadable-id': ({ given }) => ({
    what: `\`Last-Event-ID\` must be the number of an event, and “${given}” is none.`,
    mend: 'Send the id of the last event that came, or leave the header out to begin now.',
  }),
  'events.full': ({ most }) => ({
    what: `As many screens listen already as can (${most}).`,
    mend: 'Close some, or ask again in a minute.',
  }),
  'http.not-found': ({ method, path }) => ({
    what: `There is nothing at ${method} ${path}.`,
    mend: 'The page at /api/v1/ lists what there is.',
  }),
  'http.not-json': {
    what: 'What was sent is not JSON.',
    mend: 'Send one JSON object with the header `Content-Type: application/json`; look for a missing comma or quotation mark.',
  },
  'http.too-large': {
    what: 'What was sent is larger than this route takes.',
    mend: 'Send it in parts.',
  },
  'http.too-many': {
    what: 'Too many requests came from here.',
    mend: 'Wait as long as `Retry-After` says, then go on.',
  },
  'http.refused': ({ because }) => ({
    what: `The request cannot be read: ${because}.`,
    mend: 'The page at /api/v1/ shows how each is asked.',
  }),
  'http.closing': {
    what: 'The server is being stopped.',
    mend: 'Ask again in a moment, with the same `Idempotency-Key`.',
  },
  'http.our-fault': {
    what: 'Something went wrong here, by a fault of the program.',
    mend: 'The log says what, under the request id.',
  },
};
