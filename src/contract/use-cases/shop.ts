import Type from 'typebox';
import { BODIES, id } from '../records/bodies.js';
import type { RecordKind } from '../records/record-kinds.js';
import { recordSchema } from '../records/record-schema.js';
import { closed, stringSpec, text, wholeFrom } from '../schemas/pieces.js';
import { defineUseCase } from '../use-case.js';

/** The version that the writer saw; where another stands by now, the write is refused. */
export const expectedVersion = wholeFrom(1, 'the version that you saw');

export const saveWire = saving('wire', '/wires/save', 'Enter a wire that the shop buys, or change it');
export const saveMachine = saving('machine', '/machines/save', 'Enter a machine, or change it');
export const saveBin = saving('bin', '/bins/save', 'Enter a bin of the racks, or change it');
export const saveInstrument = saving(
  'instrument',
  '/instruments/save',
  'Enter an instrument that orders may call by name, or change it',
);
export const saveTuning = saving(
  'tuning',
  '/tunings/save',
  'Enter a tuning that orders may call by name, or change it',
);
export const saveSet = saving('set', '/sets/save', 'Enter a stock set, or change it');
export const saveSettings = saving(
  'settings',
  '/settings/save',
  "Settle the shop's name, rules and rates: there is one such record",
);

/** Strings that the shop had before it kept records, or that came from elsewhere: no run tells of them. */
export const enterLot = defineUseCase({
  name: 'enter-lot',
  summary: 'Enter strings that lie in a bin and that no run of these records made, as a released lot',
  permission: 'shop.edit',
  path: '/string-lots/enter',
  input: closed({
    id,
    name: text('as written on the lot'),
    spec: stringSpec,
    binId: id,
    counted: wholeFrom(1, 'strings'),
    reason: text('why they are entered'),
  }),
  output: recordSchema('string-lot'),
});

function saving<Kind extends RecordKind>(kind: Kind, path: string, summary: string) {
  return defineUseCase({
    name: `save-${kind}`,
    summary,
    permission: 'shop.edit',
    path,
    input: closed({ id, expectedVersion: Type.Optional(expectedVersion), body: BODIES[kind] }),
    output: recordSchema(kind),
  });
}
