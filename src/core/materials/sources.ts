import { SOURCES_OF_MATERIALS } from './sources-of-materials.js';
import { SOURCES_OF_METHODS } from './sources-of-methods.js';
import { SOURCES_OF_QUALITY } from './sources-of-quality.js';
import { SOURCES_OF_STRINGS } from './sources-of-strings.js';
import { SOURCES_OF_WIRE } from './sources-of-wire.js';

/** Every source of the project, once. Figures and tests refer to them by key. */
export const SOURCES = {
  ...SOURCES_OF_WIRE,
  ...SOURCES_OF_MATERIALS,
  ...SOURCES_OF_STRINGS,
  ...SOURCES_OF_METHODS,
  ...SOURCES_OF_QUALITY,
};

/** Key of a source in the list of sources. */
export type SourceKey = keyof typeof SOURCES;
