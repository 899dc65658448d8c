// @ts-check
import { writeFileSync } from 'node:fs';
import { tsImport } from 'tsx/esm/api';

// Writes docs/handbook/lives.md from the lifecycles in the core.

const { livesPage } = await tsImport('./lives-page.ts', import.meta.url);
writeFileSync(new URL('../docs/handbook/lives.md', import.meta.url), livesPage());
console.log('Wrote docs/handbook/lives.md.');
