import { fail, type Result, succeed } from '../foundation/index.js';
import { type Recipe, recipeBody } from '../recipes/index.js';
import {
  type ChosenSet,
  candidateOf,
  chooseSets,
  type LikedSet,
  type NoSetFault,
  type SetPosition,
  type SetTargets,
  type StringCandidate,
  type StringSpec,
  stringKey,
  type TargetFault,
  targetsFor,
  wantedKind,
} from '../sets/index.js';
import type { SeatModel } from '../string/index.js';
import { type Catalogue, lengthOverAllM } from './catalogue.js';
import { likedSet, likedTensionN, type UnknownString } from './liked-set.js';
import type { PlayerRequest, WantedString } from './order.js';

/** What the shop can offer a player, best first. */
export interface RequestAnswer {
  readonly sets: readonly ChosenSet[];
  readonly targets: SetTargets;
  /** The set that is liked, where one is, and its whole pull where it is liked. */
  readonly liked?: LikedSet;
  readonly likedTensionN?: number;
  /** A candidate of the answer as the string that lies in a bin. */
  readonly specOf: (candidate: StringCandidate) => StringSpec;
}

export type RequestFault =
  | { readonly kind: 'target'; readonly fault: TargetFault }
  | { readonly kind: 'no-set'; readonly fault: NoSetFault; readonly positions: readonly SetPosition[] }
  | { readonly kind: 'string-unknown'; readonly of: 'likes' | 'wishes'; readonly unknown: UnknownString }
  | { readonly kind: 'pin-out-of-range'; readonly position: number; readonly strings: number };

export interface RequestQuestion {
  readonly request: PlayerRequest;
  /** How many sets are wanted of the answer. */
  readonly quantity: number;
  /** How many answers to show at most. */
  readonly count: number;
}

/** Answers requests from one catalogue: what all of them share is worked out once. */
export type RequestAnswerer = (question: RequestQuestion) => Result<RequestAnswer, RequestFault>;

/** An answerer for this catalogue: recipes' bodies and the shelf are looked up once, then serve every request. */
export function requestAnswerer(catalogue: Catalogue): RequestAnswerer {
  const book = candidateBook(catalogue);
  return ({ request, quantity, count }) => {
    const liked = request.reference && likedSet(request.reference, catalogue);
    if (liked && !liked.ok) return fail({ kind: 'string-unknown', of: 'likes', unknown: liked.fault });
    const targets = targetsFor({
      instrument: request.instrument,
      tuning: request.tuning,
      wish: request.wishes,
      ...(liked ? { liked: liked.value } : {}),
    });
    if (!targets.ok) return fail({ kind: 'target', fault: targets.fault });
    const lengthM = lengthOverAllM(catalogue.rules, Math.max(...request.instrument.scaleLengthsM));
    const candidates = book(request, lengthM);
    const positions = withPins(targets.value.positions, request, candidates, catalogue);
    if (!positions.ok) return positions;
    const sets = chooseSets({
      positions: positions.value,
      candidates,
      rules: { ...catalogue.rules, ...thirdWish(request) },
      weights: targets.value.weights,
      sets: quantity,
      count,
    });
    if (!sets.ok) return fail({ kind: 'no-set', fault: sets.fault, positions: positions.value });
    return succeed({
      sets: sets.value,
      targets: targets.value,
      ...(liked ? { liked: liked.value, likedTensionN: likedTensionN(liked.value) } : {}),
      specOf: ({ gaugeThou, kind, material }) => ({ gaugeThou, kind, material, end: request.end, lengthM }),
    });
  };
}

const thirdWish = ({ wishes }: PlayerRequest) =>
  wishes.woundThird === undefined ? {} : { woundThird: wishes.woundThird };

/** Candidates for a request: the book's plain strings and its wound ones of the material that is asked for. */
function candidateBook({ recipes, strings, seat }: Catalogue) {
  const onShelf = new Map<string, number>();
  for (const { spec, count } of strings)
    onShelf.set(stringKey(spec), (onShelf.get(stringKey(spec)) ?? 0) + count);
  const bodies = new Map(recipes.map((recipe) => [recipe.id, bodyOf(recipe, seat)]));
  const known = new Map<string, readonly StringCandidate[]>();
  return ({ material, end }: PlayerRequest, lengthM: number): readonly StringCandidate[] => {
    const page = `${material} ${end} ${lengthM}`;
    const before = known.get(page);
    if (before) return before;
    const candidates = recipes.flatMap((recipe) => {
      const kind = recipe.construction.kind;
      const body = bodies.get(recipe.id);
      if (!body || (kind === 'wound' && recipe.material !== material)) return [];
      const key = stringKey({ ...recipe, kind, end, lengthM });
      return [candidateOf(recipe, body, { onShelf: onShelf.get(key) ?? 0 })];
    });
    known.set(page, candidates);
    return candidates;
  };
}

/** A recipe that makes no sound string is no candidate; approving it was the place to refuse it. */
function bodyOf(recipe: Recipe, seat: SeatModel | undefined) {
  const body = recipeBody(recipe, seat);
  return body.ok ? body.value : undefined;
}

function withPins(
  positions: readonly SetPosition[],
  { wishes }: PlayerRequest,
  candidates: readonly StringCandidate[],
  { rules }: Catalogue,
): Result<readonly SetPosition[], RequestFault> {
  const pinned = [...positions];
  for (const { position, string } of wishes.pins ?? []) {
    const at = pinned[position - 1];
    if (!at) return fail({ kind: 'pin-out-of-range', position, strings: positions.length });
    const ids = matching(string, candidates, rules).map(({ id }) => id);
    if (ids.length === 0)
      return fail({
        kind: 'string-unknown',
        of: 'wishes',
        unknown: {
          ...string,
          kind: wantedKind(string, rules),
          nearestGauges: nearestGauges(string, candidates, rules),
        },
      });
    pinned[position - 1] = { ...at, pinned: ids };
  }
  return succeed(pinned);
}

const matching = (
  string: WantedString,
  candidates: readonly StringCandidate[],
  rules: Catalogue['rules'],
): readonly StringCandidate[] =>
  candidates.filter(
    ({ gaugeThou, kind }) => gaugeThou === string.gaugeThou && kind === wantedKind(string, rules),
  );

function nearestGauges(
  string: WantedString,
  candidates: readonly StringCandidate[],
  rules: Catalogue['rules'],
): readonly number[] {
  const gauges = candidates
    .filter(({ kind }) => kind === wantedKind(string, rules))
    .map(({ gaugeThou }) => gaugeThou);
  return [...new Set(gauges)]
    .sort((a, b) => Math.abs(a - string.gaugeThou) - Math.abs(b - string.gaugeThou))
    .slice(0, 2);
}
