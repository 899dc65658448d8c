import type { FastifySchemaCompiler } from 'fastify';
import type { FastifySerializerCompiler } from 'fastify/types/schema.js';
import type { TSchema } from 'typebox';
import { Compile } from 'typebox/compile';
import Settings from 'typebox/system';
import { inputProblems } from '../../workshop/index.js';
import { workshopProblem } from '../workshop-problem.js';
import { queryValues } from './query-values.js';

/** All that is wrong is told, not only the first; but nobody is sent a book. */
const MOST_TOLD = 100;

/**
 * Checks what comes in as it came: nothing is turned into another type, nothing left out, all errors told. A coerced
 * `null` would make a missing micrometer reading a 0. Only a query, which is text by nature, is read by its
 * schema first. Headers are looked at where they are used.
 */
export const checkedInput: FastifySchemaCompiler<TSchema> = ({ schema, httpPart }) => {
  Settings.Settings.Set({ maxErrors: MOST_TOLD });
  if (httpPart === 'headers') return (value) => ({ value });
  const isQuery = httpPart === 'querystring';
  return (sent: unknown) => {
    const value = isQuery ? queryValues(schema, sent) : sent;
    const problems = inputProblems(schema, value);
    return problems.length === 0
      ? { value }
      : { error: workshopProblem({ code: 'input.invalid', problems }) };
  };
};

/** Checks what goes out: an answer that is not as its schema says is a fault of ours, and is not sent. */
export const checkedOutput: FastifySerializerCompiler<TSchema> = ({ schema, method, url }) => {
  const validator = Compile(schema);
  return (answer: unknown) => {
    if (validator.Check(answer)) return JSON.stringify(answer);
    const [first] = validator.Errors(answer);
    throw new Error(
      `The answer of ${method} ${url} is not as agreed: ${first?.instancePath} ${first?.message}`,
    );
  };
};
