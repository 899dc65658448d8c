import { fail, invariant, type Result, succeed } from '../foundation/index.js';
import {
  type ChosenSet,
  type NoSetFault,
  type SetPosition,
  stringKey,
  type TargetFault,
} from '../sets/index.js';
import { nearestPitch, pitchName } from '../units/index.js';
import type { RequestAnswer, RequestAnswerer, RequestFault } from './answer-request.js';
import type { PlayerRequest } from './order.js';
import { readableFact } from './readable-fact.js';
import type { OrderFault, OrderWarning, ResolvedString } from './resolved.js';

/** A string pulled by less than this share of what was wished will feel slack. Our own limit. */
const SLACK_SHARE = 0.85;
/** Within this share of the stress limit a string is worth a word. Our own limit. */
const NEAR_LIMIT_SHARE = 0.9;
/** Neck load that grows by more than this share over the liked set is worth a word. Our own limit. */
const NECK_LOAD_GROWTH = 0.05;

export interface ResolvedRequest {
  readonly strings: readonly ResolvedString[];
  readonly warnings: readonly OrderWarning[];
}

type CellFault = Omit<OrderFault, 'line' | 'orderId'>;

/** The best answer to a request as strings to make or take, with what the player should be told. */
export function resolveRequest(
  request: PlayerRequest,
  quantity: number,
  answerer: RequestAnswerer,
  stressLimit: number,
): Result<ResolvedRequest, CellFault> {
  const answer = answerer({ request, quantity, count: 1 });
  if (!answer.ok) return fail(requestFault(answer.fault, request));
  const [set] = answer.value.sets;
  invariant(set, 'an answer holds at least one set');
  return succeed({
    strings: set.strings.map((string, at) => resolvedString(string, answer.value, at)),
    warnings: requestWarnings({ set, answer: answer.value, request, stressLimit }),
  });
}

/** A string of an answer as an order keeps it, with where it will sound. */
export function resolvedString(
  string: ChosenSet['strings'][number],
  { specOf, targets }: RequestAnswer,
  at: number,
): ResolvedString {
  const spec = specOf(string.candidate);
  const position = targets.positions[at];
  invariant(position, 'a set has a string for every position');
  return {
    position: at + 1,
    spec,
    stringKey: stringKey(spec),
    recipeId: string.candidate.recipeId,
    sounding: {
      speakingLengthM: position.speakingLengthM,
      frequencyHz: position.frequencyHz,
      tensionN: string.tensionN,
      wishedTensionN: string.wishedTensionN,
      ...(string.stressShare === undefined ? {} : { stressShare: string.stressShare }),
    },
  };
}

export interface WarningQuestion {
  readonly set: ChosenSet;
  readonly answer: RequestAnswer;
  readonly request: PlayerRequest;
  readonly stressLimit: number;
}

/** What a player should be told beside the set itself. */
export function requestWarnings({
  set,
  answer,
  request,
  stressLimit,
}: WarningQuestion): readonly OrderWarning[] {
  const warnings: OrderWarning[] = [];
  const referenceN = answer.likedTensionN;
  if (referenceN !== undefined && set.totalTensionN > referenceN * (1 + NECK_LOAD_GROWTH))
    warnings.push({ code: 'neck-load', totalN: set.totalTensionN, referenceN });
  if (request.octavesAssumed)
    warnings.push({
      code: 'octaves-assumed',
      tuning: request.tuning.pitches.toReversed().map(pitchName).join(' '),
    });
  for (const { position, tensionN, wishedTensionN, stressShare } of set.strings) {
    const leastN = SLACK_SHARE * wishedTensionN;
    if (tensionN < leastN) warnings.push({ code: 'slack', position, tensionN, leastN });
    if (stressShare !== undefined && stressShare > NEAR_LIMIT_SHARE * stressLimit)
      warnings.push({ code: 'near-strength', position, stressShare });
  }
  return warnings;
}

/** A request that cannot be answered, as the fault of the cell that would mend it. */
export function requestFault(fault: RequestFault, request: PlayerRequest): CellFault {
  switch (fault.kind) {
    case 'target':
      return targetFault(fault.fault);
    case 'no-set':
      return noSetFault(fault.fault, request, fault.positions);
    case 'pin-out-of-range':
      return {
        column: 'wishes',
        code: 'order.strings-do-not-match',
        facts: { strings: fault.strings, string: fault.position },
      };
    case 'string-unknown':
      return {
        column: fault.of,
        read: String(fault.unknown.gaugeThou),
        code: 'order.recipe-missing',
        facts: {
          gaugeThou: fault.unknown.gaugeThou,
          kind: fault.unknown.kind,
          material: fault.unknown.material ?? request.material,
          nearestGauges: fault.unknown.nearestGauges,
        },
      };
  }
}

function targetFault(fault: TargetFault): CellFault {
  if ('expected' in fault)
    return {
      column: fault.code === 'target.pulls-count' ? 'wishes' : 'tuning',
      code: 'order.strings-do-not-match',
      facts: { strings: fault.expected, given: fault.given },
    };
  return { column: 'wishes', code: 'order.no-set-fits', facts: { because: fault.code } };
}

function noSetFault(
  fault: NoSetFault,
  { tuning }: PlayerRequest,
  positions: readonly SetPosition[],
): CellFault {
  if (fault.code !== 'set.would-break') {
    const position = 'position' in fault ? { position: fault.position } : {};
    return { column: 'tuning', code: 'order.no-set-fits', facts: { because: fault.code, ...position } };
  }
  const pitch = tuning.pitches[fault.position - 1];
  invariant(pitch && positions[fault.position - 1], 'a fault names a position of the request');
  return {
    column: fault.pinned ? 'wishes' : 'tuning',
    code: 'order.pitch-unreachable',
    facts: {
      position: fault.position,
      ...(fault.pinned ? { givenThou: fault.strongestGaugeThou } : {}),
      pitch: pitchName(pitch),
      scaleMm: readableFact(fault.speakingLengthM * 1000),
      highestPitch: pitchName(wholeNoteBelow(fault.highestFrequencyHz, tuning.referenceHz)),
      // Down to the whole millimetre: what is said must hold.
      longestScaleMm: Math.floor(fault.longestSpeakingLengthM * 1000),
    },
  };
}

/** The highest whole note that is not above a frequency. */
function wholeNoteBelow(frequencyHz: number, referenceHz: number) {
  const nearest = nearestPitch(frequencyHz, referenceHz);
  return { midi: nearest.cents < 0 ? nearest.midi - 1 : nearest.midi, cents: 0 };
}
