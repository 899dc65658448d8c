// @ts-check
import { readLadder } from './scripts/house/ladder.mjs';
import { layerRules } from './scripts/house/layer-rules.mjs';

/** The rules come from layers.json; nothing about the order of rooms is written here.
 * @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: layerRules(readLadder()),
  options: {
    doNotFollow: { path: 'node_modules' },
    // Type-only imports vanish in the compiled code, but a reader follows them like any other.
    tsPreCompilationDeps: true,
    moduleSystems: ['es6'],
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      mainFields: ['module', 'main', 'types'],
    },
  },
};
