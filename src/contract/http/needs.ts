import Type, { type Static } from 'typebox';
import { id, instant } from '../records/bodies.js';
import { closed, date, notNegative, oneOf, text, wholeFrom } from '../schemas/pieces.js';

/** How soon a person is needed: at once, today or tomorrow, when there is time. */
const urgency = oneOf(['now', 'soon', 'in-time']);
const since = instant;

const order = { urgency, orderId: id, number: text(), player: Type.String(), due: date, state: text() };

const wire = {
  wireId: id,
  name: text(),
  onHandKg: notNegative('kg on all spools but those in quarantine'),
  usedKg: notNegative('kg taken off spools by runs in the days that were looked at'),
  overDays: wholeFrom(1, 'calendar days that were looked at'),
  wantedDays: notNegative('days of cover below which wire is to be ordered'),
  basis: oneOf(['shop', 'common-practice'], 'who says how many days'),
};
const coverDays = notNegative('days until the spools are empty if use goes on so');

const limits = closed(
  {
    leastC: Type.Number(),
    mostC: Type.Number(),
    mostHumidity: Type.Number({ description: 'share' }),
    basis: oneOf(['shop', 'common-practice']),
  },
  'what the dry room is held to, and who says so',
);

/** What needs a person now: each with the record where it is mended. */
export const need = Type.Union([
  closed({ kind: Type.Literal('order-late'), ...order, daysLate: wholeFrom(1, 'calendar days') }),
  closed({ kind: Type.Literal('order-due'), ...order, daysLeft: wholeFrom(0, '0 today, 1 tomorrow') }),
  closed({
    kind: Type.Literal('run-paused'),
    urgency,
    runId: id,
    name: text(),
    machine: Type.String(),
    stringKey: text(),
    since,
  }),
  closed({
    kind: Type.Literal('lot-on-hold'),
    urgency,
    lotId: id,
    name: text(),
    stringKey: text(),
    reason: Type.String(),
    since,
  }),
  closed({
    kind: Type.Literal('lot-in-check'),
    urgency,
    lotId: id,
    name: text(),
    stringKey: text(),
    strings: wholeFrom(0, 'made'),
    since,
  }),
  closed({ kind: Type.Literal('wire-low'), urgency, ...wire, coverDays }),
  closed({
    kind: Type.Literal('dry-room-out'),
    urgency,
    room: text(),
    temperatureC: Type.Number(),
    relativeHumidity: Type.Number({ description: 'share' }),
    limits,
    since,
  }),
  closed({
    kind: Type.Literal('dry-room-silent'),
    urgency,
    room: Type.String({ description: 'empty where nothing was ever read' }),
    since: Type.Optional(since),
  }),
  closed({ kind: Type.Literal('request-waiting'), urgency, requestId: id, player: text(), since }),
  closed({
    kind: Type.Literal('complaint-open'),
    urgency,
    complaintId: id,
    player: text(),
    faultCode: text(),
    since,
  }),
  closed({
    kind: Type.Literal('clock-behind'),
    urgency,
    computerSays: instant,
    behindMinutes: notNegative('min'),
  }),
]);
export type Need = Static<typeof need>;

export const needsAnswer = closed({
  at: instant,
  needs: Type.Array(need, { description: 'the most urgent first' }),
});
export const needsQuery = closed({});

/** How long the wire of a kind lasts; no days where none was used of late. */
const wireCover = closed({ ...wire, coverDays: Type.Optional(coverDays) });
export type WireCover = Static<typeof wireCover>;

export const wireCoverAnswer = closed({ items: Type.Array(wireCover) });
export const wireCoverQuery = closed({});
