import Type from 'typebox';
import { closed, text, wholeFrom } from '../schemas/pieces.js';

/** A fact of a fault: what words tell of it. */
export const fact = Type.Union([
  Type.String(),
  Type.Number(),
  Type.Array(Type.String()),
  Type.Array(Type.Number()),
]);

/** What is wrong with a line of a file that is to be taken in. */
export const importFault = closed({
  line: wholeFrom(1, 'line of the file'),
  column: Type.Optional(text('heading as the file has it')),
  orderId: Type.Optional(text("the order's number")),
  read: Type.Optional(Type.String({ description: 'what the cell held' })),
  code: text(),
  facts: Type.Record(Type.String(), fact),
});

export const fileHeadings = Type.Array(
  closed({ heading: Type.String(), samples: Type.Array(Type.String()) }),
  { description: 'headings of the file, each with its first filled cells' },
);
