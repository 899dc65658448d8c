import Type from 'typebox';
import { closed, wholeFrom } from '../schemas/pieces.js';
import { BODIES, id, instant } from './bodies.js';
import type { RecordKind } from './record-kinds.js';

/** The form of a kept record of a kind, as use cases and lists give it. */
export const recordSchema = <Kind extends RecordKind>(kind: Kind) =>
  closed({
    id,
    version: wholeFrom(1, 'counts up with every change; name it when you change the record'),
    state: Type.String({ description: 'where it stands in its life; empty where its kind has none' }),
    createdAt: instant,
    updatedAt: instant,
    body: BODIES[kind],
  });
