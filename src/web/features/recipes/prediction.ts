import type { BodyOf } from '../../../contract/index.js';
import type { Result } from '../../../core/foundation/index.js';
import { fail, succeed } from '../../../core/foundation/index.js';
import {
  breakingFrequencyHz,
  type ConstructionFault,
  PRIOR_SEAT,
  type SeatModel,
  type Sounding,
  type StringBody,
  type StringEstimates,
  seatFor,
  stringBody,
  stringEstimates,
} from '../../../core/string/index.js';

/** What a recipe is reckoned to be, and how sure that is. */
export interface Prediction {
  readonly body: StringBody;
  readonly seat: SeatModel;
  readonly sounding: Sounding;
  readonly estimates: StringEstimates;
  readonly breakingHz: number | undefined;
}

export function predict(
  { construction }: Pick<BodyOf<'recipe'>, 'construction'>,
  sounding: Sounding,
  seat: SeatModel = PRIOR_SEAT,
): Result<Prediction, ConstructionFault> {
  const body = stringBody(construction, seat);
  if (!body.ok) return body;
  const estimates = stringEstimates(construction, sounding, seat);
  if (!estimates.ok) return fail(estimates.fault);
  return succeed({
    body: body.value,
    seat: seatFor(construction, seat),
    sounding,
    estimates: estimates.value,
    breakingHz: breakingFrequencyHz(body.value, sounding.speakingLengthM),
  });
}
