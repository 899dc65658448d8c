import { STATUS_CODES } from 'node:http';
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';

/** Answers what went wrong as problem details (RFC 9457). A fault of the server's own is written to the log in full and
 * told to the asker without its inner words, which may name files and values. */
export function answerFault(fault: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const status = fault.statusCode ?? 500;
  if (status >= 400 && status < 500) return answerProblem(request, reply, { status, detail: fault.message });
  request.log.error(fault);
  return answerProblem(request, reply, {
    status: 500,
    detail: 'Something went wrong here. The log says what.',
  });
}

/** Answers that nothing stands at the address asked for. */
export function answerNothingHere(request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const detail = `There is nothing at ${request.method} ${request.url}.`;
  return answerProblem(request, reply, { status: 404, detail });
}

interface Problem {
  readonly status: number;
  readonly detail: string;
}

function answerProblem(
  request: FastifyRequest,
  reply: FastifyReply,
  { status, detail }: Problem,
): FastifyReply {
  const title = STATUS_CODES[status] ?? 'Unknown fault';
  return reply
    .status(status)
    .type('application/problem+json')
    .send({ type: 'about:blank', title, status, detail, instance: request.url });
}
