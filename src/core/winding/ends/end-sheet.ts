import type { AlloyId } from '../../materials/index.js';
import type { Recipe } from '../../recipes/index.js';
import type { StringEnd, StringSpec } from '../../sets/index.js';
import type { CoreWire, StringBody } from '../../string/index.js';
import { type Caution, endCautions } from '../cautions.js';
import type { WindingPractice } from '../practice.js';
import { cutLengthM } from '../wire-per-string.js';
import { type EndPractice, STARTING_END_PRACTICE } from './end-practice.js';
import type { EndPull } from './end-pull.js';
import { endWireM } from './end-wire.js';
import { jointStrength } from './joint-strength.js';
import { type PiecesToPull, piecesToPull } from './pieces-to-pull.js';
import { PROOF_SHARE, type PullTest, pullTest } from './pull-test.js';
import { pullLeftBehind } from './tail-friction.js';
import { type TwistsWanted, twistsWanted } from './twists-wanted.js';

/** The short sheet of what is cut and ended at the bench: plain strings, or the cores of wound ones. SI units. */
export interface EndSheet {
  readonly of: 'plain-string' | 'core';
  readonly wireId: string;
  readonly shape: 'round' | 'hex';
  readonly sizeM: number;
  readonly alloy: AlloyId;
  readonly end: StringEnd;
  readonly quantity: number;
  /** What is cut: the length over all, what the end takes, what the hook and the clamp hold and is cut off. */
  readonly cut: {
    readonly lengthM: number;
    readonly lengthOverAllM: number;
    readonly endM: number;
    readonly tailM: number;
    /** What the end takes by its geometry; more than is set aside for it would make the string short. */
    readonly endNeedsM: number;
  };
  readonly wireM: number;
  readonly wireKg: number;
  readonly twists: TwistsWanted;
  /** Share of its pull that friction alone leaves in the tail. */
  readonly pullLeftShare: number;
  readonly tail: { readonly wantedM: number; readonly mostM: number };
  /** Length over all, either way. */
  readonly lengthEitherWayM: number;
  /** Left out where no strength is known for the wire. */
  readonly pull?: PullTest;
  readonly toPull: PiecesToPull;
  readonly cautions: readonly Caution[];
}

interface EndTask {
  readonly recipe: Recipe;
  readonly body: StringBody;
  readonly spec: StringSpec;
  readonly quantity: number;
  readonly practice: WindingPractice;
  readonly endPractice?: EndPractice;
  /** Ends of this wire that were pulled before, the latest last; left out where that is not known. */
  readonly pulls?: readonly EndPull[];
}

/** What the bench sets and checks for the ends of a run. A length over all runs from the ball or eye to the tail. */
export function endSheet(task: EndTask): EndSheet {
  const { recipe, body, spec, quantity, practice, endPractice = STARTING_END_PRACTICE, pulls } = task;
  const wire = wireOf(recipe);
  const twists = twistsWanted(wire.sizeM, endPractice);
  const lengthM = cutLengthM({ lengthM: spec.lengthM, end: spec.end, practice });
  const pull = pullTest(wire, body);
  return {
    of: recipe.construction.kind === 'plain' ? 'plain-string' : 'core',
    wireId: recipe.coreWireId,
    shape: wire.shape,
    sizeM: wire.sizeM,
    alloy: wire.alloy,
    end: spec.end,
    quantity,
    cut: {
      lengthM,
      lengthOverAllM: spec.lengthM,
      endM: practice.twistTakesM[spec.end],
      tailM: practice.coreTailM,
      endNeedsM: endWireM({ sizeM: wire.sizeM, end: spec.end, twists: twists.wanted }, endPractice),
    },
    wireM: quantity * lengthM,
    wireKg: quantity * lengthM * body.coreMassKgPerM,
    twists,
    pullLeftShare: pullLeftBehind(twists.wanted),
    tail: { wantedM: endPractice.tailM, mostM: endPractice.mostTailM },
    lengthEitherWayM: endPractice.lengthEitherWayM,
    ...(pull && { pull }),
    toPull: piecesToPull(quantity, pulls && jointStrength(pulls, PROOF_SHARE)),
    cautions: endCautions(recipe.construction),
  };
}

const wireOf = ({ construction }: Recipe): CoreWire =>
  construction.kind === 'plain' ? construction.wire : construction.core;
