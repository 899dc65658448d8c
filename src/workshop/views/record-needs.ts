import type { Need } from '../../contract/index.js';
import { calendarDate, daysBetween } from '../../core/foundation/index.js';
import { localClock } from '../local-clock.js';
import type { NeedsOf } from './needs-of.js';

/** Orders that are late, or due today or tomorrow, and not on their way yet; the earliest due first. */
export const orderNeeds: NeedsOf = async ({ records }, now) => {
  const today = localClock(now).date;
  const open = [
    ...(await records.all('order', { state: 'received' })),
    ...(await records.all('order', { state: 'packing' })),
  ];
  return open
    .flatMap(({ id, state, body }): Need[] => {
      const day = calendarDate(body.due);
      const daysLeft = day === undefined ? 0 : daysBetween(today, day);
      const { number, player, due } = body;
      const order = { orderId: id, number, player, due, state };
      if (daysLeft < 0) return [{ kind: 'order-late', urgency: 'now', ...order, daysLate: -daysLeft }];
      if (daysLeft > 1) return [];
      return [{ kind: 'order-due', urgency: daysLeft === 0 ? 'now' : 'soon', ...order, daysLeft }];
    })
    .sort((a, b) => ('due' in a && 'due' in b ? a.due.localeCompare(b.due) : 0));
};

/** Runs that were paused: their machine waits, or their spools do. */
export const runNeeds: NeedsOf = async ({ records }) => {
  const needs: Need[] = [];
  for (const { id, updatedAt, body } of await records.all('run', { state: 'paused' })) {
    const machine = await records.get('machine', body.machineId);
    needs.push({
      kind: 'run-paused',
      urgency: 'now',
      runId: id,
      name: body.name,
      machine: machine?.body.name ?? '',
      stringKey: body.stringKey,
      since: updatedAt,
    });
  }
  return needs;
};

/** Lots of strings that nobody may pack yet: held back, or waiting for a check. */
export const lotNeeds: NeedsOf = async ({ records }) => [
  ...(await records.all('string-lot', { state: 'on-hold' })).map(
    ({ id, updatedAt, body: { name, stringKey, holdReason = '' } }): Need => ({
      kind: 'lot-on-hold',
      urgency: 'soon',
      lotId: id,
      name,
      stringKey,
      reason: holdReason,
      since: updatedAt,
    }),
  ),
  ...(await records.all('string-lot', { state: 'in-check' })).map(
    ({ id, createdAt, body: { name, stringKey, made } }): Need => ({
      kind: 'lot-in-check',
      urgency: 'in-time',
      lotId: id,
      name,
      stringKey,
      strings: made,
      since: createdAt,
    }),
  ),
];

const A_DAY_MS = 86_400_000;

/** A player who has waited for a day is to hear from us next. */
export const requestNeeds: NeedsOf = async ({ records }, now) =>
  (await records.all('request', { state: 'waiting' })).map(({ id, createdAt, body }) => ({
    kind: 'request-waiting',
    urgency: Date.parse(now) - Date.parse(createdAt) > A_DAY_MS ? 'soon' : 'in-time',
    requestId: id,
    player: body.player,
    since: createdAt,
  }));

export const complaintNeeds: NeedsOf = async ({ records }) =>
  (await records.all('complaint', { state: 'open' })).map(({ id, createdAt, body }) => ({
    kind: 'complaint-open',
    urgency: 'soon',
    complaintId: id,
    player: body.player,
    faultCode: body.faultCode,
    since: createdAt,
  }));
