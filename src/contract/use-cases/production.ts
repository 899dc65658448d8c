import Type from 'typebox';
import { BODIES, id, instant, setTo } from '../records/bodies.js';
import { recordSchema } from '../records/record-schema.js';
import { endChecked } from '../schemas/end-check.js';
import { closed, notNegative, oneOf, positive, stringSpec, text, wholeFrom } from '../schemas/pieces.js';
import { caution } from '../schemas/set-up-sheet.js';
import { defineUseCase } from '../use-case.js';
import { expectedVersion } from './shop.js';
import { reason } from './stock.js';

export const saveRecipe = defineUseCase({
  name: 'save-recipe',
  summary: 'Write a new recipe, or edit one; an edited recipe is predicted again',
  permission: 'recipe.edit',
  path: '/recipes/save',
  input: closed({ id, expectedVersion: Type.Optional(expectedVersion), body: BODIES.recipe }),
  output: recordSchema('recipe'),
});

export const stepRecipe = defineUseCase({
  name: 'step-recipe',
  summary: 'Put a recipe on trial, call it calibrated, retire or revive it',
  permission: 'recipe.approve',
  path: '/recipes/step',
  input: closed({
    id,
    expectedVersion,
    step: oneOf(['try', 'calibrate', 'retire', 'revive']),
    note: Type.String({ description: 'takes the place of the recipe’s note unless empty' }),
  }),
  output: recordSchema('recipe'),
});

export const planRun = defineUseCase({
  name: 'plan-run',
  summary: 'Plan a run of one kind of string on one machine',
  permission: 'plan.freeze',
  path: '/runs/plan',
  input: closed({
    id,
    name: text('as the floor calls it'),
    recipeId: id,
    machineId: id,
    spec: stringSpec,
    quantity: wholeFrom(1, 'good strings wanted'),
    planId: Type.Optional(id),
  }),
  output: recordSchema('run'),
});

const ofRun = { runId: id, expectedVersion };

export const startRun = defineUseCase({
  name: 'start-run',
  summary: 'Mount the spools and start a run',
  permission: 'run.work',
  path: '/runs/start',
  input: closed({ ...ofRun, spoolIds: Type.Array(id, { minItems: 1, maxItems: 8, uniqueItems: true }) }),
  output: recordSchema('run'),
});

export const acknowledgeCautions = defineUseCase({
  name: 'acknowledge-cautions',
  summary: 'Say that one has read the cautions of a machine’s run',
  permission: 'run.work',
  path: '/cautions/acknowledge',
  input: closed({
    id,
    machineId: id,
    cautions: Type.Array(caution, { minItems: 1, maxItems: 20, uniqueItems: true }),
    edition: wholeFrom(1, 'which words the cautions had'),
  }),
  output: closed({ id, at: instant }),
});

export const pauseRun = defineUseCase({
  name: 'pause-run',
  summary: 'Pause a run; its machine is free for another',
  permission: 'run.work',
  path: '/runs/pause',
  input: closed(ofRun),
  output: recordSchema('run'),
});

export const resumeRun = defineUseCase({
  name: 'resume-run',
  summary: 'Go on with a paused run',
  permission: 'run.work',
  path: '/runs/resume',
  input: closed(ofRun),
  output: recordSchema('run'),
});

const grossKg = positive('what the spool weighs with its wire, kg');

export const changeSpool = defineUseCase({
  name: 'change-spool',
  summary: 'Take a spool off a run by weight and mount another of the same wire',
  permission: 'run.work',
  path: '/runs/change-spool',
  input: closed({ ...ofRun, oldSpoolId: id, oldGrossKg: grossKg, newSpoolId: id }),
  output: closed({
    record: recordSchema('run'),
    usedMg: wholeFrom(0, 'wire taken off the old spool by this run, mg'),
  }),
});

const spoolsAtEnd = Type.Array(closed({ spoolId: id, grossKg: Type.Optional(grossKg) }), {
  maxItems: 8,
  description: 'spools as weighed at the end; of those not weighed the use is computed from the recipe',
});

const wireUsed = closed({
  wireId: id,
  spoolId: id,
  mg: wholeFrom(0, 'mg'),
  mm: wholeFrom(0, 'mm'),
  how: oneOf(['weighed', 'computed'], 'whether a scale said so, or the recipe'),
});

export const closeRun = defineUseCase({
  name: 'close-run',
  summary: 'Close a run: its strings to a bin, its wire out of the spools, its scrap by reason',
  permission: 'run.work',
  path: '/runs/close',
  input: closed({
    ...ofRun,
    lotId: id,
    lotName: text('name of the lot'),
    binId: id,
    good: wholeFrom(0, 'good strings'),
    scrap: Type.Array(closed({ reason, count: wholeFrom(1, 'strings') }), { maxItems: 20 }),
    spools: spoolsAtEnd,
  }),
  output: closed({
    run: recordSchema('run'),
    lot: Type.Optional(recordSchema('string-lot')),
    wire: Type.Array(wireUsed, { description: 'what each spool gave at the close' }),
  }),
});

export const abandonRun = defineUseCase({
  name: 'abandon-run',
  summary: 'Give a run up; wire that it took is scrap',
  permission: 'run.work',
  path: '/runs/abandon',
  input: closed({ ...ofRun, reason, spools: Type.Optional(spoolsAtEnd) }),
  output: closed({ run: recordSchema('run'), wire: Type.Array(wireUsed) }),
});

export const recordRunSettings = defineUseCase({
  name: 'record-run-settings',
  summary: 'Write down what a machine is set to for a run, for later ones to lean on',
  permission: 'run.work',
  path: '/runs/settings',
  input: closed({ ...ofRun, ...setTo }),
  output: recordSchema('run'),
});

const dialled = {
  setting: Type.Optional(Type.Number({ description: 'what was turned, in the unit of the machine' })),
  setBy: Type.Optional(oneOf(['advice', 'override'], 'whether it was set as advised, or otherwise')),
  seen: Type.Optional(oneOf(['gaps', 'overlaps', 'even'], 'how the turns lie')),
};

const trialString = closed({
  id,
  runId: id,
  number: wholeFrom(1, 'as tried, counted from 1'),
  position: wholeFrom(1, 'of a machine that makes two at once'),
  verdict: oneOf(['open', 'good', 'scrap']),
  ...dialled,
  at: instant,
  by: text(),
});

export const recordTrialString = defineUseCase({
  name: 'record-trial-string',
  summary: 'Write down a string wound to dial the machine in',
  permission: 'run.work',
  path: '/runs/trial-strings',
  input: closed({
    id,
    runId: id,
    number: wholeFrom(1, 'as tried, counted from 1'),
    position: Type.Union([Type.Literal(1), Type.Literal(2)]),
    ...dialled,
  }),
  output: trialString,
});

export const judgeTrialString = defineUseCase({
  name: 'judge-trial-string',
  summary: 'Call a trial string good or scrap',
  permission: 'run.work',
  path: '/runs/trial-strings/judge',
  input: closed({
    trialStringId: id,
    runId: id,
    verdict: oneOf(['good', 'scrap', 'open'], '`open` takes the verdict back'),
  }),
  output: trialString,
});

const measurement = closed({
  id,
  runId: id,
  trialStringId: Type.Optional(id),
  quantity: oneOf(['diameter', 'mass', 'length']),
  value: positive('m or kg'),
  placeM: Type.Optional(notNegative('from the end, m')),
  rotationDeg: Type.Optional(
    Type.Number({ minimum: 0, exclusiveMaximum: 360, description: 'about the axis' }),
  ),
  instrument: text('what it was measured with'),
});

export const recordMeasurements = defineUseCase({
  name: 'record-measurements',
  summary: 'Write down readings of micrometer, scale and rule',
  permission: 'run.work',
  path: '/runs/measurements',
  input: closed({ rows: Type.Array(measurement, { minItems: 1, maxItems: 200 }) }),
  output: closed({ written: wholeFrom(1, 'readings') }),
});

const endCheck = closed({
  id,
  runId: id,
  machineId: Type.Optional(id),
  spoolId: Type.Optional(id),
  ...endChecked,
  gauge: Type.Optional(text('what it was pulled with')),
  insteadOf: Type.Optional(id),
});

export const recordEndChecks = defineUseCase({
  name: 'record-end-checks',
  summary:
    'Write down what was found of cut and ended strings or cores: length, twist, tail, seat, pull test',
  permission: 'run.work',
  path: '/runs/end-checks',
  input: closed({ rows: Type.Array(endCheck, { minItems: 1, maxItems: 200 }) }),
  output: closed({ written: wholeFrom(1, 'ends') }),
});

export const recordTally = defineUseCase({
  name: 'record-tally',
  summary: 'Count good or scrapped strings at a station',
  permission: 'tally.enter',
  path: '/tallies',
  input: closed({
    id,
    runId: Type.Optional(id),
    lotId: Type.Optional(id),
    station: oneOf(['winder', 'coiler']),
    outcome: oneOf(['good', 'scrap']),
    reason: Type.String({ description: 'needed for scrap' }),
    count: wholeFrom(1, 'strings'),
  }),
  output: closed({ id, at: instant }),
});

const takingBack = {
  /** Of the taking back, which is an entry of its own. */
  id,
  reason,
};
const takenBack = closed({ id, at: instant });

export const voidTally = defineUseCase({
  name: 'void-tally',
  summary: 'Take a count back; it and this both stay in the journal, and no sum has it any more',
  permission: 'tally.enter',
  path: '/tallies/void',
  input: closed({ ...takingBack, tallyId: id }),
  output: takenBack,
});

export const voidMeasurement = defineUseCase({
  name: 'void-measurement',
  summary: 'Take a reading back; nothing is learned from it any more',
  permission: 'run.work',
  path: '/runs/measurements/void',
  input: closed({ ...takingBack, measurementId: id }),
  output: takenBack,
});

export const voidTrialString = defineUseCase({
  name: 'void-trial-string',
  summary: 'Take a trial string back, with all that was measured of it',
  permission: 'run.work',
  path: '/runs/trial-strings/void',
  input: closed({ ...takingBack, trialStringId: id }),
  output: takenBack,
});

const ofLot = { lotId: id, expectedVersion, reason };

export const releaseLot = defineUseCase({
  name: 'release-lot',
  summary: 'Release a lot of strings for packing',
  permission: 'lot.release',
  path: '/lots/release',
  input: closed(ofLot),
  output: recordSchema('string-lot'),
});

export const holdLot = defineUseCase({
  name: 'hold-lot',
  summary: 'Hold a lot of strings back from packing',
  permission: 'lot.hold',
  path: '/lots/hold',
  input: closed(ofLot),
  output: recordSchema('string-lot'),
});

export const scrapLot = defineUseCase({
  name: 'scrap-lot',
  summary: 'Throw away all strings of a lot that lie in bins',
  permission: 'lot.release',
  path: '/lots/scrap',
  input: closed(ofLot),
  output: closed({ record: recordSchema('string-lot'), scrapped: wholeFrom(0, 'strings') }),
});
