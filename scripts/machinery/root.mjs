// @ts-check
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's folder, whatever folder a command was typed in. */
export const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** The full path of something in the project's folder.
 * @param {...string} parts */
export const rootPath = (...parts) => join(ROOT, ...parts);
