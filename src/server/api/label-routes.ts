import type { FastifyInstance } from 'fastify';
import Type, { type Static } from 'typebox';
import { id, problemDetails } from '../../contract/index.js';
import { LABELS_3_BY_8, packLabelsPdf } from '../../documents/index.js';
import { type Clock, labelOfPack, labelsOfOrder, type Store } from '../../workshop/index.js';

const PLACES = LABELS_3_BY_8.columns * LABELS_3_BY_8.rows;
const PERMISSION = 'pack.work';

const byId = Type.Object({ id }, { additionalProperties: false });
const query = Type.Object(
  {
    place: Type.Optional(
      Type.Integer({
        minimum: 1,
        maximum: PLACES,
        default: 1,
        description: 'the first label of the sheet that is not gone yet, along the rows',
      }),
    ),
  },
  { additionalProperties: false },
);
type Asked = { readonly Params: Static<typeof byId>; readonly Querystring: Static<typeof query> };

const PDF = {
  description: 'A PDF of sheets of labels.',
  content: { 'application/pdf': { schema: Type.String({ format: 'binary' }) } },
};

/** Labels as PDF, made anew whenever they are asked for: of a pack, and of all packs of an order. */
export function labelRoutes(api: FastifyInstance, store: Store, clock: Clock): void {
  const routes = [
    ['/packs/:id/label.pdf', 'print-pack-label', 'The label of a pack, to print.', labelOfPack],
    ['/orders/:id/labels.pdf', 'print-order-labels', 'The labels of the packs of an order.', labelsOfOrder],
  ] as const;
  for (const [path, operationId, summary, see] of routes) {
    api.get<Asked>(path, {
      config: { permission: PERMISSION },
      schema: {
        operationId,
        summary,
        tags: ['packs'],
        'x-permission': PERMISSION,
        params: byId,
        querystring: query,
        response: { 200: PDF, default: problemDetails },
      },
      handler: async ({ params, query: { place = 1 } }, reply) => {
        const seen = await store.read((tx) => see(tx, params.id, clock.now()));
        const pdf = await packLabelsPdf({ ...seen, firstPlace: place - 1 });
        return reply.type('application/pdf').send(Buffer.from(pdf));
      },
    });
  }
}
