import { lifecycle } from '../foundation/index.js';

/** A spool from goods-in to empty. */
export const SPOOL_LIFE = lifecycle({
  of: 'spool',
  initial: 'on-shelf',
  steps: {
    mount: { from: ['on-shelf'], to: 'on-machine' },
    dismount: { from: ['on-machine'], to: 'on-shelf' },
    quarantine: { from: ['on-shelf', 'on-machine'], to: 'quarantined' },
    free: { from: ['quarantined'], to: 'on-shelf' },
    finish: { from: ['on-shelf', 'on-machine'], to: 'empty' },
  },
});

/** A lot of strings from the machine to the last one packed. */
export const STRING_LOT_LIFE = lifecycle({
  of: 'string-lot',
  initial: 'in-check',
  steps: {
    release: { from: ['in-check', 'on-hold'], to: 'released' },
    hold: { from: ['in-check', 'released'], to: 'on-hold' },
    scrap: { from: ['in-check', 'on-hold'], to: 'scrapped' },
  },
});

/** A run from plan to close. */
export const RUN_LIFE = lifecycle({
  of: 'run',
  initial: 'planned',
  steps: {
    start: { from: ['planned'], to: 'running' },
    pause: { from: ['running'], to: 'paused' },
    resume: { from: ['paused'], to: 'running' },
    close: { from: ['running', 'paused'], to: 'closed' },
    abandon: { from: ['planned', 'running', 'paused'], to: 'abandoned' },
  },
});

/** A recipe from a calculation to a settled way of making a gauge. */
export const RECIPE_LIFE = lifecycle({
  of: 'recipe',
  initial: 'predicted',
  steps: {
    try: { from: ['predicted'], to: 'on-trial' },
    calibrate: { from: ['on-trial'], to: 'calibrated' },
    retire: { from: ['predicted', 'on-trial', 'calibrated'], to: 'retired' },
    revive: { from: ['retired'], to: 'predicted' },
    edit: { from: ['predicted', 'on-trial', 'calibrated'], to: 'predicted' },
  },
});

/** A player's request. */
export const REQUEST_LIFE = lifecycle({
  of: 'request',
  initial: 'waiting',
  steps: {
    answer: { from: ['waiting', 'answered'], to: 'answered' },
    order: { from: ['answered'], to: 'ordered' },
    decline: { from: ['waiting', 'answered'], to: 'declined' },
  },
});

/** An order from arrival to the post. */
export const ORDER_LIFE = lifecycle({
  of: 'order',
  initial: 'received',
  steps: {
    pack: { from: ['received'], to: 'packing' },
    ship: { from: ['packing'], to: 'shipped' },
    cancel: { from: ['received', 'packing'], to: 'cancelled' },
  },
});

/** One set in its bag. */
export const PACK_LIFE = lifecycle({
  of: 'pack',
  initial: 'open',
  steps: {
    seal: { from: ['open'], to: 'sealed' },
    ship: { from: ['sealed'], to: 'shipped' },
    void: { from: ['open', 'sealed'], to: 'void' },
  },
});

/** A complaint from the letter to the answer. */
export const COMPLAINT_LIFE = lifecycle({
  of: 'complaint',
  initial: 'open',
  steps: {
    answer: { from: ['open'], to: 'answered' },
    close: { from: ['open', 'answered'], to: 'closed' },
    reopen: { from: ['closed'], to: 'open' },
  },
});

/** A plan: one is in force for a day, those before it are kept. */
export const PLAN_LIFE = lifecycle({
  of: 'plan',
  initial: 'in-force',
  steps: { supersede: { from: ['in-force'], to: 'superseded' } },
});

/** A round of measuring a machine's dial, up to the table that it gives. */
export const DIAL_ROUND_LIFE = lifecycle({
  of: 'dial-round',
  initial: 'open',
  steps: {
    adopt: { from: ['open'], to: 'adopted' },
    undo: { from: ['adopted'], to: 'open' },
    drop: { from: ['open'], to: 'dropped' },
  },
});

export const LIVES = {
  spool: SPOOL_LIFE,
  'string-lot': STRING_LOT_LIFE,
  run: RUN_LIFE,
  recipe: RECIPE_LIFE,
  request: REQUEST_LIFE,
  order: ORDER_LIFE,
  pack: PACK_LIFE,
  complaint: COMPLAINT_LIFE,
  plan: PLAN_LIFE,
  'dial-round': DIAL_ROUND_LIFE,
} as const;
