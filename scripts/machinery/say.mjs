// @ts-check

/** One plain line on the terminal, said while the thing is done.
 * @param {string} line */
export function say(line) {
  console.log(`tautwork: ${line}`);
}

/** Does a thing, says what before it and how long it took after it.
 * @template T
 * @param {string} what a clause that fits before '...'
 * @param {() => Promise<T>} doing
 * @returns {Promise<T>} */
export async function sayWhile(what, doing) {
  say(`${what} ...`);
  const from = performance.now();
  const outcome = await doing();
  say(`  done in ${((performance.now() - from) / 1000).toFixed(1)} s`);
  return outcome;
}

/** A fault that the reader can mend: shown as its message alone, without a stack. */
export class SetUpFault extends Error {}

/** Runs a script's main work; a set-up fault ends it with its words and exit code 1.
 * @param {() => Promise<void>} work */
export async function withWords(work) {
  try {
    await work();
  } catch (fault) {
    if (!(fault instanceof SetUpFault)) throw fault;
    console.error(`tautwork: ${fault.message}`);
    process.exitCode = 1;
  }
}
