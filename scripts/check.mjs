// @ts-check
import { CHECKS, perform } from './machinery/checks.mjs';
import { heedStops } from './machinery/stopping.mjs';

// The quick half of `npm test`: format, lint, types, layers, unused code. It expects the packages to be there.

heedStops();
let failed = 0;
for (const check of CHECKS) if (!(await perform(check))) failed += 1;
console.log(`${CHECKS.length - failed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
