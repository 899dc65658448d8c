import { readFileSync } from 'node:fs';
import { packageRoot } from '../workshop/index.js';

/** The version of the program, as its package says. */
export function programVersion(): string {
  const text = readFileSync(new URL('package.json', packageRoot()), 'utf8');
  return (JSON.parse(text) as { readonly version: string }).version;
}
