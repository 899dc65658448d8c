import type { FastifyInstance } from 'fastify';
import Type from 'typebox';
import { id, problemDetails } from '../../contract/index.js';
import { playerCardPdf } from '../../documents/index.js';
import { cardOfRequest, type Store } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';

const permission = 'request.read';

/** The card that goes back to a player, as a PDF. */
export function cardRoute(api: FastifyInstance, store: Store): void {
  api.get<{ Params: { readonly id: string } }>('/requests/:id/card.pdf', {
    config: { permission },
    schema: {
      operationId: 'print-player-card',
      summary: "The player's card of an answered request, as a PDF.",
      tags: ['requests'],
      'x-permission': permission,
      params: Type.Object({ id }),
      response: {
        200: {
          description: 'the card',
          content: { 'application/pdf': { schema: Type.String({ format: 'binary' }) } },
        },
        default: problemDetails,
      },
    },
    handler: async (request, reply) => {
      const requestId = request.params.id;
      const card = await store.read((tx) => cardOfRequest(tx, requestId));
      const pdf = await playerCardPdf(card);
      if (!pdf) throw workshopProblem({ code: 'request.without-answer', requestId });
      return reply
        .type('application/pdf')
        .header('content-disposition', 'inline; filename="strings.pdf"')
        .send(Buffer.from(pdf));
    },
  });
}
