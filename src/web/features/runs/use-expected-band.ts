import { type Estimate, estimate } from '../../../core/numeric/index.js';
import { useMay } from '../../api/session.js';
import { useAllRecords, useRecord, useVersions } from '../../api/use-records.js';
import { predict } from '../recipes/prediction.js';
import type { RunRecord } from './run-record.js';

/** Only the diameter is asked for, and that does not hang on where the string sounds. */
const ANY_SOUNDING = { speakingLengthM: 0.648, frequencyHz: 110 } as const;

/** The mean diameter that the recipe, in the version that the run was set up by, is reckoned to give; undefined while it is not known. */
export function useExpectedBand({ body }: RunRecord): Estimate | undefined {
  const may = useMay();
  const enabled = may('recipe.read');
  const present = useRecord('recipe', body.recipeId, { enabled }).data;
  const versions = useVersions('recipe', body.recipeId, { enabled }).data;
  const seat = useAllRecords('settings').data?.[0]?.body.seat;
  const used = versions?.find(({ version }) => version === body.recipeVersion) ?? present;
  const predicted = used && predict(used.body, ANY_SOUNDING, seat);
  if (!predicted?.ok) return undefined;
  const { value, u } = predicted.value.estimates.meanDiameterM;
  return estimate(value, u);
}
