import { materialInWords } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import { fail, type Result, succeed } from '../../../core/foundation/index.js';
import { readGauges, readMaterial } from '../../../core/orders/index.js';
import { type StringEnd, type StringSpec, wantedKind } from '../../../core/sets/index.js';
import { formatGauge, formatTrimmed, millimetresFromMetres, parseLength } from '../../../core/units/index.js';
import type { RecordOf } from '../../api/use-records.js';

export type SetRecord = RecordOf<'set'>;

/** A set while somebody writes it: texts as typed. */
export interface SetDraft {
  readonly name: string;
  readonly gauges: string;
  readonly material: string;
  readonly end: StringEnd;
  readonly length: string;
}

export type DraftFault =
  | { readonly field: 'name' }
  | { readonly field: 'gauges'; readonly part: string }
  | { readonly field: 'length'; readonly isOutOfRange: boolean };

/** Strings of a set may be so long over all: from a short-scale tail to a long bass with room to tie. Our own limits. */
export const SET_LENGTH_RANGE_M = { leastM: 0.4, mostM: 2 } as const;

type Rules = Pick<Shop, 'rules'>;

/** What a draft begins with: the set as it stands, or a blank of the shop's usual length. */
export function draftOfSet(record: SetRecord | undefined, { rules }: Rules): SetDraft {
  const strings = record?.body.strings ?? [];
  const [first] = strings;
  const wound = strings.find(({ kind }) => kind === 'wound');
  return {
    name: record?.body.name ?? '',
    gauges: strings.map((spec) => gaugeText(spec, rules)).join('-'),
    material: materialInWords(wound?.material ?? 'nickel-plated-steel'),
    end: first?.end ?? 'ball',
    length: lengthText(first?.lengthM ?? rules.standardLengthM),
  };
}

/** With its kind where the shop would take the bare gauge for the other. */
function gaugeText({ gaugeThou, kind }: StringSpec, rules: Shop['rules']): string {
  const bare = formatGauge(gaugeThou);
  return wantedKind({ gaugeThou }, rules) === kind ? bare : `${bare} ${kind}`;
}

export const lengthText = (lengthM: number): string =>
  `${formatTrimmed(millimetresFromMetres(lengthM), 2)} mm`;

/** The set that a draft says, or what in it cannot be read. */
export function readSetDraft(
  draft: SetDraft,
  { rules }: Rules,
): Result<SetRecord['body'], readonly DraftFault[]> {
  const faults: DraftFault[] = [];
  const name = draft.name.trim();
  if (name === '') faults.push({ field: 'name' });
  const gauges = readGauges(draft.gauges);
  if (!gauges.ok) faults.push({ field: 'gauges', part: String(gauges.fault.facts.part ?? '') });
  const length = parseLength(draft.length, SET_LENGTH_RANGE_M);
  if (!length.ok) faults.push({ field: 'length', isOutOfRange: length.fault.code === 'unit.out-of-range' });
  const material = readMaterial(draft.material);
  if (!gauges.ok || !length.ok || !material.ok || faults.length > 0) return fail(faults);
  const strings = gauges.value.map((string): StringSpec => {
    const kind = wantedKind(string, rules);
    return {
      gaugeThou: string.gaugeThou,
      kind,
      material: kind === 'plain' ? 'plain-steel' : material.value,
      end: draft.end,
      lengthM: length.value,
    };
  });
  return succeed({ name, strings });
}

/** Whether the draft's fields can say all that the set is: its strings differ in no more than gauge and kind. */
export function draftSaysAll(record: SetRecord, shop: Rules): boolean {
  const read = readSetDraft(draftOfSet(record, shop), shop);
  return (
    read.ok && JSON.stringify(read.value.strings.map(flat)) === JSON.stringify(record.body.strings.map(flat))
  );
}

const flat = ({ gaugeThou, kind, material, end, lengthM }: StringSpec) => [
  gaugeThou,
  kind,
  material,
  end,
  lengthM.toFixed(5),
];

/** Strings that the shop has no recipe for. */
export const withoutRecipe = (
  strings: readonly StringSpec[],
  { recipes }: Pick<Shop, 'recipes'>,
): readonly StringSpec[] =>
  strings.filter(
    ({ gaugeThou, kind, material }) =>
      !recipes.some(
        (recipe) =>
          recipe.gaugeThou === gaugeThou && recipe.material === material && recipe.construction.kind === kind,
      ),
  );
