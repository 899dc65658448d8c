import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { rootPath } from './the-house.js';

type Files = Readonly<Record<string, string>>;

/** A small house without fault, in which the breaches below are planted. */
const CLEAN: Files = {
  'package.json': JSON.stringify({
    type: 'module',
    dependencies: { 'bought-in': '1.0.0' },
    devDependencies: { 'for-tests': '1.0.0' },
  }),
  ...invented('bought-in'),
  ...invented('for-tests'),
  ...invented('stowaway'),
  'src/core/index.ts': "export * from './planning/index.js';\nexport * from './units/index.js';\n",
  'src/core/units/index.ts': "export { metres } from './length.js';\n",
  'src/core/units/length.ts': 'export const metres = 1;\n',
  'src/core/units/length.test.ts': "import 'for-tests';\nimport { metres } from './length.js';\nmetres;\n",
  'src/core/planning/index.ts': "export { type Plan, plan } from './plan.js';\n",
  'src/core/planning/plan.ts':
    "import { metres } from '../units/index.js';\nexport interface Plan { m: number }\nexport const plan = metres;\n",
  'src/contract/index.ts': "export { plan as shown } from '../core/index.js';\n",
  'src/workshop/index.ts': "export { plan as day } from '../core/planning/index.js';\n",
  'src/server/index.ts':
    "import 'bought-in';\nimport 'node:fs';\nexport { day } from '../workshop/index.js';\n",
  'scripts/start.mjs': "import 'node:fs';\n",
  'src/web/main.ts': "import 'for-tests';\nexport { shown } from '../contract/index.js';\n",
  'test/published/pitch.test.ts': "export { plan } from '../../src/core/planning/index.js';\n",
};

interface Breach {
  readonly what: string;
  readonly at: string;
  readonly text: string;
  readonly rule: string;
}

const BREACHES: readonly Breach[] = [
  {
    what: 'a room that takes only a type from a room on its right',
    at: 'src/core/units/type-from-the-right.ts',
    text: "import type { Plan } from '../planning/index.js';\nexport type Wanted = Plan;\n",
    rule: 'room-units-looks-left',
  },
  {
    what: 'a room that takes a value from a room on its right',
    at: 'src/core/stock/value-from-the-right.ts',
    text: "export { plan as wanted } from '../planning/index.js';\n",
    rule: 'room-stock-looks-left',
  },
  {
    what: 'a room that goes through the door of the whole core',
    at: 'src/core/costing/by-the-front-door.ts',
    text: "export { metres } from '../index.js';\n",
    rule: 'room-costing-looks-left',
  },
  {
    what: 'a room that reaches past the door of another',
    at: 'src/core/planning/past-the-door.ts',
    text: "export { metres } from '../units/length.js';\n",
    rule: 'through-the-door-of-a-room',
  },
  {
    what: 'a layer that reaches past the door of a room',
    at: 'src/workshop/past-the-door.ts',
    text: "export { metres } from '../core/units/length.js';\n",
    rule: 'through-the-door-of-a-layer',
  },
  {
    what: 'a test across rooms that reaches past a door',
    at: 'test/published/past-the-door.test.ts',
    text: "export { metres } from '../../src/core/units/length.js';\n",
    rule: 'through-the-door-of-a-layer',
  },
  {
    what: 'a file of the whole core that reaches past the door of a room',
    at: 'src/core/past-the-door.ts',
    text: "export { metres } from './units/length.js';\n",
    rule: 'through-the-doors-of-all-rooms',
  },
  {
    what: 'a Node module in the core',
    at: 'src/core/units/reads-a-file.ts',
    text: "export { readFileSync } from 'node:fs';\n",
    rule: 'no-node-where-the-browser-runs',
  },
  {
    what: 'only a type of a Node module in the core',
    at: 'src/core/units/type-of-node.ts',
    text: "import type { Stats } from 'node:fs';\nexport type Wanted = Stats;\n",
    rule: 'no-node-where-the-browser-runs',
  },
  {
    what: 'a package in the core',
    at: 'src/core/units/needs-a-package.ts',
    text: "import 'bought-in';\n",
    rule: 'core-needs-no-package',
  },
  {
    what: 'a page that asks the workshop directly',
    at: 'src/web/asks-the-workshop.ts',
    text: "export { day } from '../workshop/index.js';\n",
    rule: 'layer-web-uses-what-it-may',
  },
  {
    what: 'a core that asks the server',
    at: 'src/core/units/asks-the-server.ts',
    text: "export { day } from '../../server/index.js';\n",
    rule: 'layer-core-uses-what-it-may',
  },
  {
    what: 'two files of one room in a circle, by types alone',
    at: 'src/core/units/circle-a.ts',
    text: "import type { B } from './circle-b.js';\nexport interface A { b: B }\n",
    rule: 'no-cycles',
  },
  {
    what: 'a product file that borrows from a test',
    at: 'src/core/units/borrows-from-a-test.ts',
    text: "export { metres } from './length.test.js';\n",
    rule: 'tests-stay-out-of-the-product',
  },
  {
    what: 'a server that needs a development package',
    at: 'src/server/needs-a-dev-package.ts',
    text: "import 'for-tests';\n",
    rule: 'product-needs-no-dev-package',
  },
  {
    what: 'a set-up script that needs a package before it is installed',
    at: 'scripts/machinery/too-early.mjs',
    text: "import 'bought-in';\n",
    rule: 'set-up-needs-no-package',
  },
  {
    what: 'a package that package.json does not name',
    at: 'src/server/needs-a-stowaway.ts',
    text: "import 'stowaway';\n",
    rule: 'every-package-is-declared',
  },
  {
    what: 'an import that leads nowhere',
    at: 'src/server/leads-nowhere.ts',
    text: "export { gone } from './gone.js';\n",
    rule: 'every-import-leads-somewhere',
  },
];

const OTHER_HALF: Files = {
  'src/core/units/circle-b.ts': "import type { A } from './circle-a.js';\nexport interface B { a: A }\n",
};

describe('the layer rules', () => {
  let found: readonly string[];
  beforeAll(async () => {
    const planted = Object.fromEntries(BREACHES.map((breach) => [breach.at, breach.text]));
    found = await breachesIn({ ...CLEAN, ...OTHER_HALF, ...planted });
  });

  it('find nothing wrong with a house in order', async () => {
    expect(await breachesIn(CLEAN)).toEqual([]);
  });

  it.each(BREACHES)('catch $what', ({ at, rule }) => {
    expect(found).toContain(`${at}: ${rule}`);
  });
});

function invented(name: string): Files {
  return {
    [`node_modules/${name}/package.json`]: JSON.stringify({ name, version: '1.0.0', main: 'index.js' }),
    [`node_modules/${name}/index.js`]: 'module.exports = {};',
  };
}

/** What the very tool and configuration that `npm test` runs say of a house, as 'file: rule'. */
async function breachesIn(files: Files): Promise<readonly string[]> {
  const folder = mkdtempSync(join(tmpdir(), 'tautwork-house-'));
  try {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const report = JSON.parse(await cruise(folder)) as {
      summary: { totalCruised: number; violations: { from: string; rule: { name: string } }[] };
    };
    expect(report.summary.totalCruised).toBeGreaterThan(10);
    return report.summary.violations.map(({ from, rule }) => `${from}: ${rule.name}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The cruiser works from the current folder, which a test thread cannot change: hence a process of its own. */
function cruise(folder: string): Promise<string> {
  const cruiser = rootPath('node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const config = rootPath('.dependency-cruiser.mjs');
  const asked = [cruiser, 'src', 'scripts', 'test', '--config', config, '--output-type', 'json'];
  return new Promise((resolve, reject) => {
    execFile(process.execPath, asked, { cwd: folder, maxBuffer: 2 ** 26 }, (_exit, stdout, stderr) => {
      if (stdout.startsWith('{')) resolve(stdout);
      else reject(new Error(`The cruiser gave no report: ${stderr}`));
    });
  });
}
