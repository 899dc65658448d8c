import Type from 'typebox';
import { id } from '../records/bodies.js';
import { recordSchema } from '../records/record-schema.js';
import { closed, text, wholeFrom } from '../schemas/pieces.js';
import { defineUseCase } from '../use-case.js';
import { expectedVersion } from './shop.js';

const pack = recordSchema('pack');
const position = wholeFrom(1, '1 is the treble');

export const openPacks = defineUseCase({
  name: 'open-packs',
  summary: 'Open a pack for each set of an order that has none yet',
  permission: 'pack.work',
  path: '/packs/open',
  input: closed({ orderId: id, expectedVersion }),
  output: closed({ order: recordSchema('order'), packs: Type.Array(pack) }),
});

export const pickString = defineUseCase({
  name: 'pick-string',
  summary: 'Put a string from a bin into an open pack',
  permission: 'pack.work',
  path: '/packs/pick',
  input: closed({ packId: id, expectedVersion, position, lotId: id, binId: id }),
  output: pack,
});

export const unpickString = defineUseCase({
  name: 'unpick-string',
  summary: 'Put a string of an open pack back into the bin that it came from',
  permission: 'pack.work',
  path: '/packs/unpick',
  input: closed({ packId: id, expectedVersion, position }),
  output: pack,
});

export const sealPack = defineUseCase({
  name: 'seal-pack',
  summary: 'Close a pack that holds all its strings',
  permission: 'pack.work',
  path: '/packs/seal',
  input: closed({ packId: id, expectedVersion }),
  output: pack,
});

export const voidPack = defineUseCase({
  name: 'void-pack',
  summary: 'Give a pack up: its strings go back to their bins',
  permission: 'pack.work',
  path: '/packs/void',
  input: closed({ packId: id, expectedVersion, reason: text('kept in the journal') }),
  output: pack,
});

export const shipOrder = defineUseCase({
  name: 'ship-order',
  summary: 'Send the sealed packs of an order to the player',
  permission: 'pack.ship',
  path: '/orders/ship',
  input: closed({
    orderId: id,
    expectedVersion,
    partial: Type.Boolean({ description: 'true sends what is sealed and leaves the rest of the order open' }),
  }),
  output: closed({ order: recordSchema('order'), shipped: Type.Array(pack) }),
});
