import { grouped } from '../foundation/index.js';
import { median } from '../numeric/index.js';
import { type GroupMoments, holm, momentsDifference, momentsOf, momentsWithout } from '../stats/index.js';
import { type RunSeen, type RunValue, valuesOf } from './run-seen.js';

/** A lot of wire whose strings are otherwise than those of other lots, recipes allowed for. */
export interface OddLot {
  readonly lot: string;
  /** `along`: how many times as much its strings vary along their length; `weight`: by what share they weigh more. */
  readonly by: 'along' | 'weight';
  readonly value: number;
  readonly from: number;
  readonly to: number;
  /** Made good for all the lots that were looked at. */
  readonly p: number;
  readonly runs: number;
  readonly lotsLookedAt: number;
}

/** Our own choices, no source: as few runs as a spread of their own can be told from, and a clear verdict. */
const LEAST_RUNS = 4;
const PROVEN = 0.001;
/** A lot must be so much otherwise to be worth a walk to the shelf. */
const WORTH = { along: Math.log(1.5), weight: 0.01 } as const;
const MOST_LOTS = 3;

/**
 * Lots of wire that stand out, the clearest first. Each lot's runs are compared with others (Welch's t, made good for the
 * number of lots by Holm): how much strings vary, with runs of the same recipes by other wire; what they weigh, with
 * what every recipe says of itself. The clearest lot is taken out before the next is sought, so that a good core does not
 * stand accused of the wrap that it was wound with.
 */
export function oddLots(runs: readonly RunSeen[], by: OddLot['by']): readonly OddLot[] {
  const found: OddLot[] = [];
  let left = valuesOf(runs, by)
    .filter(({ value }) => by === 'weight' || value > 0)
    .map((each) => (by === 'along' ? { ...each, value: Math.log(each.value) } : each));
  while (found.length < MOST_LOTS) {
    const clearest = clearestLot(left, by);
    if (!clearest) break;
    found.push(clearest);
    left = left.filter(({ run }) => !run.lots.includes(clearest.lot));
  }
  return found;
}

function clearestLot(values: readonly RunValue[], by: OddLot['by']): OddLot | undefined {
  const compare = by === 'along' ? amongItsRecipes(values) : amongAll(values);
  const looked = lotsOf(values).flatMap(([lot, runs]) => {
    const { own, others } = compare(lot, runs);
    if (own.count < LEAST_RUNS || others.count < LEAST_RUNS) return [];
    const test = momentsDifference(others, own);
    return test.ok ? [{ lot, runs: own.count, ...test.value }] : [];
  });
  const adjusted = holm(looked.map(({ p }) => p));
  const clear = looked
    .map((each, at) => ({ ...each, p: adjusted[at]! }))
    .filter(({ p, difference }) => p < PROVEN && isWorth(difference, by))
    .sort((a, b) => a.p - b.p || Math.abs(b.t) - Math.abs(a.t))[0];
  if (!clear) return undefined;
  const told = (value: number): number => (by === 'along' ? Math.exp(value) : value);
  const { lot, runs, p, difference, interval } = clear;
  return {
    lot,
    by,
    value: told(difference),
    from: told(interval.from),
    to: told(interval.to),
    p,
    runs,
    lotsLookedAt: looked.length,
  };
}

type Compared = { readonly own: GroupMoments; readonly others: GroupMoments };
type Compare = (lot: string, runs: readonly RunValue[]) => Compared;

/** With runs of the same recipes, each less the middle of its recipe's others; where a recipe has too few, it says nothing. */
function amongItsRecipes(values: readonly RunValue[]): Compare {
  const ofRecipe = grouped(values, ({ run }) => run.recipeId);
  return (lot, runs) => {
    const parts = [...grouped(runs, ({ run }) => run.recipeId)].flatMap(([recipeId, own]) => {
      const others = ofRecipe.get(recipeId)!.filter(({ run }) => !run.lots.includes(lot));
      if (others.length < LEAST_RUNS) return [];
      const middle = median(others.map(({ value }) => value));
      return [{ own: less(own, middle), others: less(others, middle) }];
    });
    return {
      own: momentsOf(parts.flatMap(({ own }) => own)),
      others: momentsOf(parts.flatMap(({ others }) => others)),
    };
  };
}

function amongAll(values: readonly RunValue[]): Compare {
  const all = momentsOf(less(values, 0));
  return (_lot, runs) => {
    const own = momentsOf(less(runs, 0));
    return { own, others: momentsWithout(all, own) };
  };
}

const less = (values: readonly RunValue[], middle: number): readonly number[] =>
  values.map(({ value }) => value - middle);

function lotsOf(values: readonly RunValue[]): readonly (readonly [string, readonly RunValue[]])[] {
  const lots = new Map<string, RunValue[]>();
  for (const each of values)
    for (const lot of each.run.lots) {
      const known = lots.get(lot);
      if (known) known.push(each);
      else lots.set(lot, [each]);
    }
  return [...lots];
}

/** Wire that is evener than any other is no trouble; a weight may be off to either side. */
const isWorth = (difference: number, by: OddLot['by']): boolean =>
  by === 'along' ? difference > WORTH.along : Math.abs(difference) > WORTH.weight;
