#!/usr/bin/env node
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const commands = new URL('../dist/src/cli/main.js', import.meta.url);

if (existsSync(commands)) {
  const { main } = await import(commands.href);
  await main(process.argv.slice(2));
} else {
  console.error(
    'tautwork: the commands are not compiled yet. Run `npm run build` (or `npm start`) once in the',
  );
  console.error(`tautwork: folder ${fileURLToPath(new URL('..', import.meta.url))}`);
  process.exitCode = 2;
}
