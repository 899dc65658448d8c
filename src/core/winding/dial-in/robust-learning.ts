import { type Belief, learn, type Observation, processError } from './belief.js';

/** Degrees of freedom of the tails that readings are believed to have: few strings in a hundred go far astray. */
const TAIL_DEGREES = 6;
const ROUNDS = 6;

/**
 * Learns from a string whose error may lie in a heavy tail: its variance is enlarged the more, the further it
 * stays from what is believed after it, as Student's t has it (variational; R. Piche, S. Sarkka & J. Hartikainen,
 * Proc. IEEE MLSP 2012; from memory). A string near what was expected is taken in nearly as the plain filter would.
 */
export function learnRobustly(belief: Belief, seen: Observation): Belief {
  let weight = 1;
  let after = belief;
  for (let round = 0; round < ROUNDS; round++) {
    after = learn(belief, { ...seen, varianceM2: seen.varianceM2 / weight });
    const left = processError(after, seen.position, seen.setting);
    const squares = ((seen.errorM - left.value) ** 2 + left.u ** 2) / seen.varianceM2;
    weight = Math.min(1, (TAIL_DEGREES + 1) / (TAIL_DEGREES + squares));
  }
  return after;
}
