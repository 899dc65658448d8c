import { STATUS_CODES } from 'node:http';
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';
import { thrownFault } from '../workshop/index.js';
import { Problem } from './problem.js';
import { workshopProblem } from './workshop-problem.js';

/** Answers what went wrong as problem details (RFC 9457). A fault of the server's own is written to the log in full and
 * told to the asker without its inner words, which may name files and values. */
export function answerFault(fault: FastifyError, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const problem = problemOf(fault);
  if (problem.status >= 500) request.log.error(fault);
  return answerProblem(problem, request, reply);
}

/** Answers that nothing stands at the address asked for. */
export function answerNothingHere(request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const { method, url: path } = request;
  return answerProblem(workshopProblem({ code: 'http.not-found', method, path }), request, reply);
}

function answerProblem(problem: Problem, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const { status, code, detail, facts, headers } = problem;
  const title = STATUS_CODES[status] ?? 'Unknown fault';
  const { url: instance, id: requestId } = request;
  return (
    reply
      .status(status)
      .headers(headers)
      .type('application/problem+json')
      // Not by the schema of the route's answers: a problem must reach the asker whatever the route.
      .serializer(JSON.stringify)
      // Our own words take the place of a fact of that name: what the store says of its trouble (`detail`) names files and hosts.
      .send({ ...facts, type: `/api/v1/#${code}`, title, status, code, detail, instance, requestId })
  );
}

function problemOf(fault: FastifyError): Problem {
  if (fault instanceof Problem) return fault;
  const told = thrownFault(fault);
  if (told) return workshopProblem(told);
  const { statusCode: status = 500, message, code } = fault;
  const known = LIBRARY_REFUSALS[code ?? ''] ?? LIBRARY_REFUSALS[status];
  if (known !== undefined) return withStatus(status, workshopProblem({ code: known }));
  if (status < 400 || status >= 500) return workshopProblem({ code: 'http.our-fault' });
  return withStatus(status, workshopProblem({ code: 'http.refused', because: message.replace(/\.$/, '') }));
}

/** What the HTTP library refuses before any of our code is asked: by its code, or by its status. */
const LIBRARY_REFUSALS: Readonly<Record<string, string>> = {
  FST_ERR_CTP_INVALID_JSON_BODY: 'http.not-json',
  FST_ERR_CTP_EMPTY_JSON_BODY: 'http.not-json',
  413: 'http.too-large',
  415: 'http.not-json',
  429: 'http.too-many',
  503: 'http.closing',
};

const withStatus = (status: number, problem: Problem): Problem => new Problem({ ...problem, status });
