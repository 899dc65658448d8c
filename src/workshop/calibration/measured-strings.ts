import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { MeasuredString, WireUsed } from '../../core/recipes/index.js';
import { type Construction, coreSize, wrapSize } from '../../core/string/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { RecipeRecord } from '../production/recipe-in-core.js';
import { constructionOfRun } from './construction-of-run.js';
import { lotName } from './lot-name.js';
import { type StringRead, stringsRead } from './strings-read.js';

/** A certificate states a diameter to some micrometres: anywhere within this, m. Our own choice, no source. */
const CERTIFIED_WITHIN_M = 2e-6;

/**
 * Every measured string of the shop as the calibration takes it: how it was made comes from its run, the version of
 * the recipe that the run was set up by, and the spools with their certificates. A weight without a cut length is of
 * the string's whole length, without its end.
 */
export async function measuredStrings(
  tx: ReadTransaction,
  recipes: readonly RecipeRecord[],
): Promise<readonly MeasuredString[]> {
  const read = await stringsRead(tx);
  const spools = new Map((await tx.records.all('spool')).map((spool) => [spool.id, spool]));
  const lots = new Map((await tx.records.all('string-lot')).map(({ id, body }) => [id, body.spoolIds]));
  const runs = new Map((await tx.records.all('run')).map((run) => [run.id, run]));
  const constructionOf = await constructionOfRun(tx, [...runs.values()], recipes);
  const making = new Map<string, Making | undefined>();
  const makingOf = (runId: string): Making | undefined => {
    const run = runs.get(runId);
    if (!run || making.has(runId)) return making.get(runId);
    const made = constructionOf(run);
    const onIt = spoolIdsOf(run, lots).flatMap((id) => spools.get(id) ?? []);
    making.set(runId, made && { run, recipeId: made.recipeId, ...asWound(run, made, onIt) });
    return making.get(runId);
  };
  return read.flatMap((string) => {
    const made = makingOf(string.runId);
    return made ? [measured(string, made)] : [];
  });
}

type Run = StoredRecord<BodyOf<'run'>>;
type Spool = StoredRecord<BodyOf<'spool'>>;

/** How the strings of a run were made. */
interface Making {
  readonly run: Run;
  readonly recipeId: string;
  readonly construction: Construction;
  readonly wires: readonly WireUsed[];
}

/** The spools that a run began with come first. */
function spoolIdsOf({ body }: Run, lots: ReadonlyMap<string, readonly string[]>): readonly string[] {
  const takenOff = (body.takenOff ?? []).map(({ spoolId }) => spoolId);
  const ofLot = body.lotId === undefined ? [] : (lots.get(body.lotId) ?? []);
  return [...takenOff, ...ofLot, ...body.spoolIds];
}

/** The construction with sizes as the spools' certificates have them, and the lots of its wires. */
function asWound(
  run: Run,
  made: { readonly construction: Construction; readonly wireIds: readonly string[] },
  spools: readonly Spool[],
): Pick<Making, 'construction' | 'wires'> {
  const { construction, wireIds } = made;
  const ofWire = wireIds.map((wireId) => spools.find(({ body }) => body.wireId === wireId));
  const certified = ofWire.map((spool) => spool?.body.certificate?.diameterM);
  const sized = withSizes(construction, certified);
  const core = sized.kind === 'plain' ? sized.wire : sized.core;
  const layers = sized.kind === 'plain' ? [] : sized.layers;
  const stated = [coreSize(core), ...layers.map(({ wireDiameterM }) => wrapSize(wireDiameterM))];
  return {
    construction: sized,
    wires: stated.map(({ u }, wire) => ({
      lot: lotName(wireIds[wire] ?? '', ofWire[wire]?.body.lot ?? `of run ${run.id}`),
      sizeUM: certified[wire] === undefined ? u : CERTIFIED_WITHIN_M / Math.sqrt(3),
    })),
  };
}

function withSizes(construction: Construction, sizes: readonly (number | undefined)[]): Construction {
  const sizeM = (wire: number, stated: number): number => sizes[wire] ?? stated;
  if (construction.kind === 'plain')
    return { ...construction, wire: { ...construction.wire, sizeM: sizeM(0, construction.wire.sizeM) } };
  const { core, layers } = construction;
  const [first, second] = layers.map((layer, at) => ({
    ...layer,
    wireDiameterM: sizeM(1 + at, layer.wireDiameterM),
  }));
  return {
    ...construction,
    core: { ...core, sizeM: sizeM(0, core.sizeM) },
    layers: second ? [first!, second] : [first!],
  };
}

function measured(string: StringRead, { run, recipeId, construction, wires }: Making): MeasuredString {
  const { stringId, runId, turnedM, largestM, heldM, massKg, cutLengthM } = string;
  const isRound = construction.kind === 'plain' || construction.core.shape === 'round';
  const meanDiameterM = turnedM ?? (isRound ? heldM : undefined);
  return {
    stringId,
    runId,
    recipeId,
    machineId: run.body.machineId,
    construction,
    wires,
    setting: string.isFirst ? 'by-sheet' : 'adjusted',
    ...(meanDiameterM === undefined ? {} : { meanDiameterM }),
    ...(largestM === undefined ? {} : { largestDiameterM: largestM }),
    ...(massKg === undefined ? {} : { unitWeightKgPerM: massKg / (cutLengthM ?? run.body.spec.lengthM) }),
  };
}
