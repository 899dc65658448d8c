import Type from 'typebox';
import { COMPLAINT_FAULTS } from '../../core/stock/index.js';
import { id } from '../records/bodies.js';
import { recordSchema } from '../records/record-schema.js';
import { closed, date, oneOf, text, wholeFrom, wholeWithin } from '../schemas/pieces.js';
import { playerRequest, wantedSet } from '../schemas/player-request.js';
import { defineUseCase } from '../use-case.js';
import { fact, fileHeadings, importFault } from './import-parts.js';
import { expectedVersion } from './shop.js';

const order = recordSchema('order');
const request = recordSchema('request');
const complaint = recordSchema('complaint');
const quantity = wholeWithin(1, 10_000, 'sets');

/* ---- requests ---- */

const asked = {
  player: text(),
  letter: Type.String({ maxLength: 20_000, description: 'what the player wrote' }),
  quantity,
  request: playerRequest,
};

export const receiveRequest = defineUseCase({
  name: 'receive-request',
  summary: 'Write down what a player asks for; it waits until somebody answers',
  permission: 'request.resolve',
  path: '/requests/receive',
  input: closed({ id, ...asked }),
  output: request,
});

export const resolveRequest = defineUseCase({
  name: 'resolve-request',
  summary:
    "Answer a player's request with the set of the shop that fits best, or another of the best; it may be answered anew",
  permission: 'request.resolve',
  path: '/requests/resolve',
  input: closed({
    id,
    expectedVersion: Type.Optional(expectedVersion),
    ...asked,
    chosen: Type.Optional(
      Type.Array(text('key of a string'), {
        minItems: 1,
        maxItems: 24,
        description: 'the set taken of those that answer, treble first; the best where left out',
      }),
    ),
  }),
  output: request,
});

export const orderRequest = defineUseCase({
  name: 'order-request',
  summary: 'Make an order of an answered request',
  permission: 'request.resolve',
  path: '/requests/order',
  input: closed({
    requestId: id,
    expectedVersion,
    orderId: id,
    number: text("the order's number"),
    due: date,
  }),
  output: closed({ request, order }),
});

export const declineRequest = defineUseCase({
  name: 'decline-request',
  summary: 'Decline a request',
  permission: 'request.resolve',
  path: '/requests/decline',
  input: closed({ requestId: id, expectedVersion, reason: text('kept in the journal') }),
  output: request,
});

/* ---- orders ---- */

export const saveOrder = defineUseCase({
  name: 'save-order',
  summary: 'Enter an order, or change one that is not yet being packed',
  permission: 'order.edit',
  path: '/orders/save',
  input: closed({
    id,
    expectedVersion: Type.Optional(expectedVersion),
    number: text(),
    player: Type.String(),
    due: date,
    note: Type.String(),
    lines: Type.Array(closed({ quantity, wanted: wantedSet }), { minItems: 1, maxItems: 1000 }),
  }),
  output: order,
});

export const cancelOrder = defineUseCase({
  name: 'cancel-order',
  summary: 'Cancel what is not yet shipped of an order; its packs must hold no strings',
  permission: 'order.edit',
  path: '/orders/cancel',
  input: closed({ orderId: id, expectedVersion, reason: text('kept in the journal') }),
  output: order,
});

/** What a heading of the file means. Left out: the headings are taken by their usual meanings. */
const columnMapping = Type.Partial(
  closed({
    order: text(),
    player: text(),
    quantity: text(),
    due: text(),
    note: text(),
    set: text(),
    gauges: text(),
    material: text(),
    end: text(),
    instrument: text(),
    scale: text(),
    tuning: text(),
    likes: text(),
    likesMaterial: text(),
    likesScale: text(),
    likesTuning: text(),
    wishes: text(),
  }),
  { additionalProperties: false, description: 'for each column, the heading that the file has for it' },
);

const fileLines = Type.Array(Type.Integer(), { description: 'lines of the file that it stands on' });
const previewedLine = closed({ setName: text(), quantity: wholeFrom(1, 'sets') });

const importPreview = closed({
  headings: fileHeadings,
  columns: columnMapping,
  ignored: Type.Array(Type.String(), { description: 'headings that mean nothing to us' }),
  orders: Type.Array(
    closed({
      number: text(),
      outcome: oneOf(['new', 'changed', 'same', 'fault']),
      fileLines,
      orderId: Type.Optional(id),
      lines: Type.Optional(Type.Array(previewedLine, { description: 'as they would be' })),
      before: Type.Optional(Type.Array(previewedLine, { description: 'as they are, where they change' })),
    }),
  ),
  faults: Type.Array(importFault),
});

export const importOrders = defineUseCase({
  name: 'import-orders',
  summary: 'Take in a file of orders, all or nothing; the same file again changes nothing',
  permission: 'order.edit',
  path: '/orders/import',
  input: closed({
    source: text('where such files come from: its column mapping is remembered by this name'),
    csv: Type.String({ minLength: 1, maxLength: 4_000_000, description: 'the file as text' }),
    mapping: Type.Optional(columnMapping),
    commit: Type.Boolean({ description: 'false only shows what would change' }),
  }),
  output: closed({ preview: importPreview, committed: Type.Boolean() }),
});

/* ---- plans ---- */

export const freezePlan = defineUseCase({
  name: 'freeze-plan',
  summary:
    "Settle a day's plan from open orders and the shelf; it takes the place of that day's earlier plan",
  permission: 'plan.freeze',
  path: '/plans/freeze',
  input: closed({ id, date, note: Type.Optional(Type.String({ maxLength: 2000 })) }),
  output: closed({
    plan: recordSchema('plan'),
    runs: Type.Array(recordSchema('run'), { description: 'the runs that start on the day, planned' }),
    late: Type.Array(
      closed({ orderId: id, number: text(), daysLate: wholeFrom(1, 'calendar days after the due date') }),
    ),
    leftOut: Type.Array(
      closed({
        orderId: id,
        number: text(),
        code: text(),
        facts: Type.Record(Type.String(), fact),
      }),
      { description: 'orders that cannot be made now, and why' },
    ),
    unmade: Type.Array(
      closed({
        stringKey: text(),
        quantity: wholeFrom(1, 'strings'),
        because: oneOf(['recipe', 'machine', 'wire']),
      }),
      { description: 'what bins lack and cannot be made now' },
    ),
  }),
});

export const rearrangePlan = defineUseCase({
  name: 'rearrange-plan',
  summary:
    'Put runs of a plan in another order or on other machines; what is begun stays, times are worked out anew',
  permission: 'plan.freeze',
  path: '/plans/rearrange',
  input: closed({
    planId: id,
    expectedVersion,
    lanes: Type.Array(
      closed({
        machineId: id,
        lotIds: Type.Array(text(), { description: 'lots of the plan that nobody began, first to last' }),
      }),
      { minItems: 1, description: 'every lot that nobody began stands in one of them, once' },
    ),
  }),
  output: closed({
    plan: recordSchema('plan'),
    runs: Type.Array(recordSchema('run'), { description: 'runs that were changed, planned or given up' }),
  }),
});

/* ---- complaints ---- */

const complainedOf = {
  faultCode: oneOf(COMPLAINT_FAULTS, 'by what the player notices'),
  packId: Type.Optional(id),
  lotId: Type.Optional(id),
  position: Type.Optional(wholeFrom(1, 'which string of the pack, 1 is the treble: it leads to the lot')),
};

export const registerComplaint = defineUseCase({
  name: 'register-complaint',
  summary: 'Write down a complaint, with the pack or lot that it is about where known',
  permission: 'complaint.register',
  path: '/complaints/register',
  input: closed({
    id,
    player: text(),
    text: text(),
    ...complainedOf,
  }),
  output: complaint,
});

export const correctComplaint = defineUseCase({
  name: 'correct-complaint',
  summary:
    'Say better what a complaint is about: its fault, pack, lot or string; what is left out is not known',
  permission: 'complaint.close',
  path: '/complaints/correct',
  input: closed({ complaintId: id, expectedVersion, ...complainedOf }),
  output: complaint,
});

export const answerComplaint = defineUseCase({
  name: 'answer-complaint',
  summary: 'Write down what the player was answered',
  permission: 'complaint.close',
  path: '/complaints/answer',
  input: closed({ complaintId: id, expectedVersion, answer: text() }),
  output: complaint,
});

export const closeComplaint = defineUseCase({
  name: 'close-complaint',
  summary: 'Close a complaint',
  permission: 'complaint.close',
  path: '/complaints/close',
  input: closed({ complaintId: id, expectedVersion }),
  output: complaint,
});

export const reopenComplaint = defineUseCase({
  name: 'reopen-complaint',
  summary: 'Open a closed complaint again',
  permission: 'complaint.close',
  path: '/complaints/reopen',
  input: closed({ complaintId: id, expectedVersion, reason: text('kept in the journal') }),
  output: complaint,
});
