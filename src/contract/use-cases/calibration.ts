import Type from 'typebox';
import { id } from '../records/bodies.js';
import { recordSchema } from '../records/record-schema.js';
import { closed } from '../schemas/pieces.js';
import { defineUseCase } from '../use-case.js';
import { expectedVersion } from './shop.js';

export const recalibrate = defineUseCase({
  name: 'recalibrate-shop',
  summary:
    'Settle how wrap sits by the strings measured so far, and call recipes calibrated that meet the rule',
  permission: 'recipe.approve',
  path: '/calibration/recalibrate',
  input: closed({
    settingsId: id,
    expectedVersion,
    recipes: Type.Array(closed({ id, expectedVersion }), {
      maxItems: 200,
      description: 'on trial, to be called calibrated; refused where the rule is not met',
    }),
  }),
  output: closed({ settings: recordSchema('settings'), recipes: Type.Array(recordSchema('recipe')) }),
});
