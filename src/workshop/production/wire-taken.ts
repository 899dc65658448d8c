import { fail, type Result, succeed } from '../../core/foundation/index.js';
import { mgFromKg } from '../../core/stock/index.js';
import type { WireUse } from '../../core/winding/index.js';
import type { OnTheScale } from '../stock/on-the-scale.js';
import type { SpoolOnBook } from '../stock/spool-book.js';

/** A spool at the end of a run, weighed or not. */
export interface SpoolAtEnd extends SpoolOnBook {
  readonly scale?: OnTheScale | undefined;
}

/** What a run took off a spool. */
export interface SpoolTaken extends SpoolAtEnd {
  readonly mg: number;
  readonly how: 'weighed' | 'computed';
}

export interface TakenQuestion {
  readonly spools: readonly SpoolAtEnd[];
  /** Wire of one string, by the recipe. */
  readonly perString: readonly WireUse[];
  readonly good: number;
  readonly scrap: number;
  /** What spools of this wire gave that were taken off before, mg. */
  readonly takenBefore: (wireId: string) => number;
}

export interface MoreThanWire {
  readonly code: 'run.more-than-wire';
  readonly wireId: string;
  readonly strings: number;
  readonly neededMg: number;
  readonly takenMg: number;
}

/**
 * How far good strings may need more wire by the recipe than the scale says was taken: a tenth. Our own choice:
 * a recipe's wire is computed, and scales and tares have their errors; beyond that a count or a weight is wrong.
 */
const DOUBT = 0.1;

/**
 * What each spool gave at the end of a run. A weighed spool gave what it lost. What the strings need beyond
 * that, by the recipe, came off the spools not weighed, in turn, as far as their wire goes; and off those
 * that weigh more than the books say, since the books were short there. Refuses strings that the wire could not make.
 */
export function wireTaken(question: TakenQuestion): Result<readonly SpoolTaken[], MoreThanWire> {
  const taken: SpoolTaken[] = [];
  for (const { wireId, kg } of question.perString) {
    const spools = question.spools.filter(({ wire }) => wire.id === wireId);
    const ofWire = takenOf(question, { wireId, mgPerString: mgFromKg(kg), spools });
    if (!ofWire.ok) return ofWire;
    taken.push(...ofWire.value);
  }
  return succeed(taken);
}

interface OneWire {
  readonly wireId: string;
  readonly mgPerString: number;
  readonly spools: readonly SpoolAtEnd[];
}

function takenOf(
  { good, scrap, takenBefore }: TakenQuestion,
  { wireId, mgPerString, spools }: OneWire,
): Result<readonly SpoolTaken[], MoreThanWire> {
  const strings = good + scrap;
  const weighed = spools.filter(isWeighed).map(byWeight);
  const computed = spools.filter((spool) => !isWeighed(spool)).sort(booksFirst);
  const known = takenBefore(wireId) + weighed.reduce((sum, { mg }) => sum + mg, 0);
  let rest = Math.max(0, mgPerString * strings - known);
  const byRecipe = computed.map((spool): SpoolTaken => {
    const mg = spool.scale ? rest : Math.min(rest, spool.book.mg);
    rest -= mg;
    return { ...spool, mg, how: 'computed' };
  });
  const neededMg = computed.length > 0 ? mgPerString * strings : Math.round(mgPerString * good * (1 - DOUBT));
  const takenMg = known + byRecipe.reduce((sum, { mg }) => sum + mg, 0);
  if (takenMg < neededMg) return fail({ code: 'run.more-than-wire', wireId, strings, neededMg, takenMg });
  return succeed([...weighed, ...byRecipe]);
}

/** Whether the scale tells what the spool lost. Where it found more than the books have, it cannot. */
const isWeighed = ({ scale, book }: SpoolAtEnd): boolean => scale !== undefined && scale.foundMg <= book.mg;

const byWeight = (spool: SpoolAtEnd): SpoolTaken => ({
  ...spool,
  mg: spool.book.mg - (spool.scale?.foundMg ?? 0),
  how: 'weighed',
});

/** Spools whose books may be right before those whose books are known to be short. */
const booksFirst = (one: SpoolAtEnd, other: SpoolAtEnd): number =>
  Number(one.scale !== undefined) - Number(other.scale !== undefined);
