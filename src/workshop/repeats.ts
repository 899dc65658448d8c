import { createHash } from 'node:crypto';
import { hasSecrets, type UseCaseDefinition, withoutSecrets } from '../contract/index.js';
import { fail, type Result, succeed } from '../core/foundation/index.js';
import type { Transaction } from '../store/index.js';
import type { WorkshopFault } from './use-case.js';

/** A request by the client's own id, so that sending it twice does it once. */
export interface Request {
  readonly definition: UseCaseDefinition;
  readonly requestId: string;
  readonly input: unknown;
}

/**
 * The answer that this request got before; undefined where it is new. The same id with another question is a
 * fault, as is a repeat of what showed a secret: that is shown once and kept nowhere.
 */
export async function earlierAnswer(
  tx: Transaction,
  request: Request,
): Promise<Result<unknown, WorkshopFault> | undefined> {
  const { definition, requestId } = request;
  const earlier = await tx.repeats.find(requestId);
  if (!earlier) return undefined;
  if (earlier.useCase !== definition.name || earlier.inputHash !== hashOf(request)) {
    return fail({ code: 'repeat.different', requestId, useCase: earlier.useCase });
  }
  return hasSecrets(definition.output)
    ? fail({ code: 'repeat.shown-once', requestId, useCase: definition.name })
    : succeed(earlier.answer);
}

/** Keeps the answer for a repeat. */
export async function keepAnswer(
  tx: Transaction,
  request: Request,
  given: { readonly answer: unknown; readonly at: string },
): Promise<void> {
  const { definition, requestId } = request;
  await tx.repeats.save({
    requestId,
    useCase: definition.name,
    inputHash: hashOf(request),
    answer: withoutSecrets(definition.output, given.answer),
    at: given.at,
  });
}

/** Secrets stay out of the hash too: a PIN could be found from it by trying all. */
const hashOf = ({ definition, input }: Request): string =>
  createHash('sha256')
    .update(JSON.stringify(inOneOrder(withoutSecrets(definition.input, input))))
    .digest('hex');

/** Fields sorted by name, so that equal inputs have equal texts. */
function inOneOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOneOrder);
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1));
  return Object.fromEntries(fields.map(([name, held]) => [name, inOneOrder(held)]));
}
