import type { FastifyInstance } from 'fastify';
import Type from 'typebox';
import { PAPERS, type PaperName, problemDetails } from '../../contract/index.js';
import type { Day } from '../../core/day/index.js';
import { type CalendarDate, calendarDate } from '../../core/foundation/index.js';
import { type Clock, localClock, planSeen, type Store } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';

/** Papers of a day's plan as it is in force, or as it would be settled now: for a printer, not for programs. */
export function paperRoutes(api: FastifyInstance, store: Store, clock: Clock): void {
  for (const name of Object.keys(PAPERS) as PaperName[]) {
    const { summary, permission } = PAPERS[name];
    api.get(`/papers/${name}.pdf`, {
      config: { permission },
      schema: {
        operationId: `print-${name}`,
        summary,
        tags: ['papers'],
        'x-permission': permission,
        querystring: paperQuery,
        response: { 200: { content: { 'application/pdf': { schema: pdf } } }, default: problemDetails },
      },
      handler: async (request, reply) => {
        const asked = request.query as PaperQuery;
        const now = clock.now();
        const date = asked.date === undefined ? localClock(now).date : needDate(asked.date);
        const { day } = await store.read((tx) => planSeen(tx, date, now));
        const made = await PRINT[name](ofLot(day, asked.lot));
        return reply
          .type('application/pdf')
          .header('content-disposition', `inline; filename="${date}-${name}.pdf"`)
          .send(Buffer.from(made));
      },
    });
  }
}

interface PaperQuery {
  readonly date?: string;
  readonly lot?: string;
}

const paperQuery = Type.Object(
  {
    date: Type.Optional(
      Type.String({ pattern: '^\\d{4}-\\d{2}-\\d{2}$', description: 'today where left out' }),
    ),
    lot: Type.Optional(
      Type.String({ minLength: 1, maxLength: 200, description: 'only what belongs to this lot' }),
    ),
  },
  { additionalProperties: false },
);
const pdf = { type: 'string', format: 'binary' };

/** Loaded when first asked for: fonts and PDF are much to hold for who never prints. */
const documents = () => import('../../documents/index.js');

const PRINT: Readonly<Record<PaperName, (day: Day) => Promise<Uint8Array>>> = {
  'day-plan': async (day) => (await documents()).dayPlanPdf(day),
  'set-up-sheets': async (day) => (await documents()).setUpSheetsPdf(day),
  'packing-roll': async (day) => (await documents()).packingRollPdf(day),
  labels: async (day) => (await documents()).labelsPdf(day),
};

function ofLot(day: Day, lot: string | undefined): Day {
  if (lot === undefined) return day;
  return { ...day, sheets: day.sheets.filter(({ lotId }) => lotId === lot) };
}

function needDate(text: string): CalendarDate {
  const date = calendarDate(text);
  if (!date) throw workshopProblem({ code: 'date.impossible', read: text });
  return date;
}
