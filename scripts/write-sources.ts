import { writeFileSync } from 'node:fs';
import { sourcesDocument } from './sources-document.js';

const page = new URL('../docs/sources.md', import.meta.url);
writeFileSync(page, sourcesDocument());
