// @ts-check
/** @typedef {import('./ladder.mjs').Ladder} Ladder */
/** @typedef {import('dependency-cruiser').IForbiddenRuleType} Rule */

const TEST_FILE = '\\.test\\.tsx?$';
// Two patterns, since the cruiser refuses a repeated group as unsafe.
const doorsOf = (/** @type {string} */ folder) => [
  `^${folder}/index\\.tsx?$`,
  `^${folder}/[^/]+/index\\.tsx?$`,
];
const CODE = '\\.(ts|tsx|mts|js|mjs)$';
/** @type {import('dependency-cruiser').DependencyType[]} */
const ANY_PACKAGE = [
  'npm',
  'npm-dev',
  'npm-optional',
  'npm-peer',
  'npm-bundled',
  'npm-no-pkg',
  'npm-unknown',
];

/** The layer rules for dependency-cruiser, made from the ladder. Every comment says what a breach means and the
 * way out, since it is what the reader of a failing check sees.
 * @param {Ladder} ladder
 * @returns {Rule[]} */
export function layerRules(ladder) {
  return [
    ...roomRules(ladder),
    ...layerUseRules(ladder),
    ...doorRules(ladder),
    ...packageRules(ladder),
    ...generalRules(),
  ];
}

/** @param {Ladder} ladder
 * @returns {Rule[]} */
function roomRules(ladder) {
  const names = ladder.rooms.map((room) => room.name);
  return names.map((name, place) => ({
    name: `room-${name}-looks-left`,
    severity: 'error',
    comment:
      `'${name}' imports a room that stands to its right (or the door of the whole core). The ladder is: ` +
      `${names.join(', ')}. Way out: move what both need to the room on the left, or take the value or function ` +
      `as an argument. Types count: a type belongs in the leftmost room that speaks of it.`,
    from: { path: `^src/core/${name}/` },
    to: { path: '^src/core/', pathNot: `^src/core/(${names.slice(0, place + 1).join('|')})/` },
  }));
}

/** @param {Ladder} ladder
 * @returns {Rule[]} */
function layerUseRules(ladder) {
  const pathOf = new Map(ladder.layers.map((layer) => [layer.name, layer.path]));
  const all = [...pathOf.values()].filter((path) => path !== 'test');
  return ladder.layers.map((layer) => {
    const allowed = [layer.path, ...layer.uses.map((used) => pathOf.get(used))];
    return {
      name: `layer-${layer.name}-uses-what-it-may`,
      severity: 'error',
      comment:
        `'${layer.name}' may use ${layer.uses.join(', ') || 'no other layer'}, and this import goes elsewhere. ` +
        `Way out: let a layer further out do the joining and hand the value in; if the thing is a law of the ` +
        `shop, it belongs in the core. The list is in layers.json.`,
      from: { path: `^${layer.path}/` },
      to: { path: `^(${all.join('|')})/`, pathNot: `^(${allowed.join('|')})/` },
    };
  });
}

/** @param {Ladder} ladder
 * @returns {Rule[]} */
function doorRules(ladder) {
  const others = ladder.layers.filter((layer) => layer.name !== 'core').map((layer) => layer.path);
  const behindDoors = ladder.layers
    .filter((layer) => layer.name !== 'test' && layer.name !== 'scripts')
    .map((layer) => layer.path);
  const comment =
    `An import reaches past a door. Only what a room exports in its index.ts is promised to others; the files ` +
    `behind it may change. Way out: import from the room's index.js, and if the thing is not there, ask whether ` +
    `others should know it before exporting it. Inside a room, import the file itself.`;
  return [
    {
      name: 'through-the-door-of-a-room',
      severity: 'error',
      comment,
      from: { path: '^src/core/([^/]+)/' },
      to: { path: `^src/core/[^/]+/.*${CODE}`, pathNot: ['^src/core/$1/', '^src/core/[^/]+/index\\.ts$'] },
    },
    {
      name: 'through-the-doors-of-all-rooms',
      severity: 'error',
      comment,
      from: { path: '^src/core/[^/]+\\.ts$' },
      to: { path: '^src/core/', pathNot: doorsOf('src/core') },
    },
    {
      name: 'through-the-door-of-a-layer',
      severity: 'error',
      comment,
      from: { path: `^(${others.join('|')})/` },
      to: {
        path: `^(${behindDoors.join('|')})/.*${CODE}`,
        pathNot: ['^$1/', ...doorsOf(`(${behindDoors.join('|')})`)],
      },
    },
  ];
}

/** @param {Ladder} ladder
 * @returns {Rule[]} */
function packageRules(ladder) {
  const pathsWhere = (/** @type {(layer: import('./ladder.mjs').Layer) => boolean} */ wanted) =>
    ladder.layers.filter(wanted).map((layer) => layer.path);
  const withoutNode = pathsWhere((layer) => layer.runsOn !== 'node');
  const shipped = pathsWhere((layer) => !['web', 'bench', 'test', 'scripts'].includes(layer.name));
  return [
    {
      name: 'core-needs-no-package',
      severity: 'error',
      comment:
        `The core imports an npm package. It must run the same in Node, in the browser and in ten years. Way out: ` +
        `do it in the layer that needs it and hand the core plain data, or write the few lines in 'numeric'.`,
      from: { path: '^src/core/', pathNot: TEST_FILE },
      to: { dependencyTypes: ANY_PACKAGE },
    },
    {
      name: 'no-node-where-the-browser-runs',
      severity: 'error',
      comment:
        `A Node module is imported by code that also runs in the browser (${withoutNode.join(', ')}). Way out: ` +
        `read files, clocks and the like in 'workshop', 'server' or 'cli', and pass what was read.`,
      from: { path: `^(${withoutNode.join('|')})/`, pathNot: TEST_FILE },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'product-needs-no-dev-package',
      severity: 'error',
      comment:
        `Code that ships imports a development package, which is absent from a production install. Way out: move ` +
        `the package to "dependencies" and give it a line in docs/decisions/0002-dependencies.md, or do without. ` +
        `(The page is bundled, so src/web may use development packages.)`,
      from: { path: `^(${shipped.join('|')})/`, pathNot: TEST_FILE },
      to: {
        dependencyTypes: ['npm-dev'],
        dependencyTypesNot: ['type-only'],
        pathNot: 'node_modules/@types/',
      },
    },
    {
      name: 'set-up-needs-no-package',
      severity: 'error',
      comment:
        `A script of the set-up imports a package or code of the product. It runs before either is there. Way out: ` +
        `use Node's own modules, or start the tool as a program of its own (runTool).`,
      from: { path: '^scripts/([^/]+\\.mjs$|machinery/)', pathNot: '^scripts/draw-' },
      to: { path: '^src/|node_modules/' },
    },
    {
      name: 'every-package-is-declared',
      severity: 'error',
      comment:
        `A package is imported that package.json does not name; it is there only because another brought it. Way ` +
        `out: add it with an exact version and its line in docs/decisions/0002-dependencies.md, or do without.`,
      from: {},
      to: { dependencyTypes: ['npm-no-pkg', 'npm-unknown'] },
    },
  ];
}

/** @returns {Rule[]} */
function generalRules() {
  return [
    {
      name: 'no-cycles',
      severity: 'error',
      comment:
        `Files import each other in a circle, so none can be read or moved alone. Way out: take out what both ` +
        `need into a file of its own that imports neither. Inside a room never import the room's own index.ts.`,
      from: {},
      to: { circular: true },
    },
    {
      name: 'tests-stay-out-of-the-product',
      severity: 'error',
      comment:
        `Code that is not a test imports a test file or the test folder. Way out: if the product needs it, it is ` +
        `product: move it to the room it speaks of.`,
      from: { path: '^(src|demo|bench|scripts)/', pathNot: TEST_FILE },
      to: { path: `(^test/|${TEST_FILE})` },
    },
    {
      name: 'every-import-leads-somewhere',
      severity: 'error',
      comment: `An import leads to no file or package. Way out: correct the path (relative, ending in .js).`,
      from: {},
      to: { couldNotResolve: true, pathNot: '\\?' },
    },
  ];
}
