import type { BodyOf, StoredRecord } from '../../../contract/index.js';
import type { StringMaterial } from '../../../core/recipes/index.js';
import type { Construction, CoreWire, WrapLayer } from '../../../core/string/index.js';
import { metresFromThou, parseGauge, thouFromMetres } from '../../../core/units/index.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';

export type WireRecord = StoredRecord<BodyOf<'wire'>>;
type RecipeBody = BodyOf<'recipe'>;

/** A recipe while somebody writes it: numbers are still text. */
export interface RecipeDraft {
  readonly name: string;
  readonly gauge: string;
  readonly material: StringMaterial;
  readonly coreWireId: string;
  /** From the core outwards; none on a plain string. */
  readonly wraps: readonly WrapDraft[];
  readonly note: string;
}

export interface WrapDraft {
  readonly wireId: string;
  readonly gapPercent: string;
  /** Thickness that the wire was rolled to; empty where it is round. */
  readonly rolledTo: string;
}

/** What is still wrong with a draft, by the place in the form. */
export type DraftPlace = 'name' | 'gauge' | 'core' | 'wrap' | 'layer';

export interface ReadDraft {
  /** The recipe, where all of it can be read. */
  readonly body: RecipeBody | undefined;
  readonly faults: ReadonlySet<DraftPlace>;
}

export const EMPTY_DRAFT: RecipeDraft = {
  name: '',
  gauge: '',
  material: 'nickel-plated-steel',
  coreWireId: '',
  wraps: [],
  note: '',
};

export const EMPTY_WRAP: WrapDraft = { wireId: '', gapPercent: '0', rolledTo: '' };

export const GAP_RULE: AmountRule = { units: { '%': 0.01 }, bare: '%', least: 0, most: 1 };
export const ROLLED_RULE: AmountRule = {
  units: { thou: metresFromThou(1), mm: 0.001, in: 0.0254 },
  bare: 'thou',
  least: metresFromThou(1),
  most: metresFromThou(60),
};

/** A recipe as the form shows it. */
export const draftOf = (body: RecipeBody): RecipeDraft => ({
  name: body.name,
  gauge: String(body.gaugeThou),
  material: body.material,
  coreWireId: body.coreWireId,
  wraps:
    body.construction.kind === 'plain'
      ? []
      : body.construction.layers.map(({ gap, rolledThicknessM }, index) => ({
          wireId: body.wrapWireIds[index] ?? '',
          gapPercent: inFigures(gap * 100),
          rolledTo: rolledThicknessM === undefined ? '' : inFigures(thouFromMetres(rolledThicknessM)),
        })),
  note: body.note,
});

/** The recipe that a draft says, from the shop's wires. */
export function readDraft(draft: RecipeDraft, wires: ReadonlyMap<string, WireRecord>): ReadDraft {
  const faults = new Set<DraftPlace>();
  const gauge = parseGauge(draft.gauge);
  const isPlain = draft.material === 'plain-steel';
  const core = coreOf(wires.get(draft.coreWireId));
  const wraps = isPlain ? [] : draft.wraps;
  const layers = wraps.map((wrap) => layerOf(wrap, wires.get(wrap.wireId)));
  if (draft.name.trim() === '') faults.add('name');
  if (!gauge.ok) faults.add('gauge');
  if (!core || (isPlain && core.shape !== 'round')) faults.add('core');
  if (!isPlain && (wraps.length === 0 || wraps.some(({ wireId }) => !wires.has(wireId)))) faults.add('wrap');
  if (!faults.has('wrap') && layers.includes(undefined)) faults.add('layer');
  const construction = core && constructionOf(core, layers);
  if (faults.size > 0 || !gauge.ok || !construction) return { body: undefined, faults };
  const body: RecipeBody = {
    name: draft.name.trim(),
    gaugeThou: gauge.value,
    material: draft.material,
    construction: construction as RecipeBody['construction'],
    coreWireId: draft.coreWireId,
    wrapWireIds: wraps.map(({ wireId }) => wireId),
    note: draft.note,
  };
  return { body, faults };
}

function coreOf(wire: WireRecord | undefined): CoreWire | undefined {
  if (wire?.body.use !== 'core' || wire.body.strengthTable === undefined) return undefined;
  const { shape, sizeM, alloy, strengthTable, certifiedStrengthPa } = wire.body;
  return {
    shape,
    sizeM,
    alloy,
    strengthTable,
    ...(certifiedStrengthPa === undefined ? {} : { certifiedStrengthPa }),
  };
}

function layerOf({ gapPercent, rolledTo }: WrapDraft, wire: WireRecord | undefined): WrapLayer | undefined {
  const gap = readAmount(gapPercent.trim() === '' ? '0' : gapPercent, GAP_RULE);
  const rolled = rolledTo.trim() === '' ? undefined : readAmount(rolledTo, ROLLED_RULE);
  if (!wire || !gap.ok || (rolled && !rolled.ok)) return undefined;
  return {
    wireDiameterM: wire.body.sizeM,
    alloy: wire.body.alloy,
    gap: gap.value,
    ...(rolled?.ok ? { rolledThicknessM: rolled.value } : {}),
  };
}

function constructionOf(
  core: CoreWire,
  layers: readonly (WrapLayer | undefined)[],
): Construction | undefined {
  const [first, second] = layers;
  if (layers.length === 0) return { kind: 'plain', wire: { ...core, shape: 'round' } };
  if (!first || (layers.length > 1 && !second)) return undefined;
  return { kind: 'wound', core, layers: second ? [first, second] : [first] };
}

const inFigures = (value: number): string => String(Number(value.toPrecision(6)));
