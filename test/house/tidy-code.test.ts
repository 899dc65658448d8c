import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { readLadder } from '../../scripts/house/ladder.mjs';
import { type HouseFile, houseFiles, isCode, isTest } from './the-house.js';

const EVERYWHERE = ['src', 'demo', 'test', 'bench', 'scripts'];
const ladder = readLadder();

describe('the core', () => {
  const core = houseFiles(['src/core'], isCode);

  it('knows no clock, no unseeded chance and nothing that changes', () => {
    const uses = core.filter(({ path }) => !isTest(path)).flatMap(impurities);
    expect(uses, 'Take the date or a `Chance` as an argument; keep what changes inside a function').toEqual(
      [],
    );
  });

  it('has no file outside a room of the ladder', () => {
    const rooms = ladder.rooms.map((room) => room.name);
    const strays = core
      .map(({ path }) => path)
      .filter((path) => path !== 'src/core/index.ts' && !rooms.includes(path.split('/')[2] ?? ''));
    expect(strays, `Move it into a room, or give its room a place in layers.json`).toEqual([]);
  });

  it('has a door for every room that is built, and no room marked "later" that stands', () => {
    const doors = new Set(core.map(({ path }) => path));
    const wrong = ladder.rooms.filter(
      ({ name, later }) => doors.has(`src/core/${name}/index.ts`) === (later === true),
    );
    const remedy = 'Give the room an index.ts, or set or remove its "later" in layers.json';
    expect(
      wrong.map((room) => room.name),
      remedy,
    ).toEqual([]);
  });
});

describe('every source file', () => {
  const code = houseFiles(EVERYWHERE, isCode);

  it('has a name that tells what it holds', () => {
    expect(code.map(({ path }) => path).filter(saysNothing), 'Name it for the one idea it holds').toEqual([]);
  });

  it('leaves no work behind without a reason', () => {
    const remedy = 'Do it, or write `TODO(who): what and why not now`';
    expect(code.flatMap(bareTodos), remedy).toEqual([]);
  });
});

describe('the demo workshop', () => {
  it('comes out the same every time', () => {
    const uses = houseFiles(['demo'], (path) => isCode(path) && !isTest(path)).flatMap(impurities);
    expect(uses, 'Draw from `seededChance` and take the date as an argument').toEqual([]);
  });
});

describe('the checks themselves', () => {
  const planted = (text: string): HouseFile => ({ path: 'planted.ts', text });

  it.each([
    'const t = Date.now();',
    'const t = new Date();',
    'const t = Date();',
    'const x = Math.random();',
    'const t = performance.now();',
    'let count = 0;',
    'export var count = 0;',
  ])('see what is impure in: %s', (text) => {
    expect(impurities(planted(text))).toHaveLength(1);
  });

  it.each([
    'const t = new Date(0);',
    '/** Never Date.now() here. */ const x = Math.max(1, 2);',
    'export function f() { let x = 0; x += 1; return x; }',
  ])('let pass what is pure: %s', (text) => {
    expect(impurities(planted(text))).toEqual([]);
  });

  it('see a bare word of unfinished work, and let a reasoned one pass', () => {
    const bare = '// TO' + 'DO later';
    const reasoned = '// TO' + 'DO(owner): two more rows, when the table is at hand';
    expect(bareTodos(planted(`${bare}\n${reasoned}`))).toHaveLength(1);
  });

  it('see a name that tells nothing', () => {
    expect(saysNothing('src/core/string/utils.ts')).toBe(true);
    expect(saysNothing('src/common/pitch.ts')).toBe(true);
    expect(saysNothing('src/core/string/string-types.ts')).toBe(true);
    expect(saysNothing('test/published/common-practice.test.ts')).toBe(false);
  });
});

/** Uses of a clock or of chance, and module-level `let`s, as 'file:line: what'. */
function impurities({ path, text }: HouseFile): readonly string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const note = (node: ts.Node, what: string) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    found.push(`${path}:${line + 1}: ${what}`);
  };
  const visit = (node: ts.Node): void => {
    const what = impureUse(node);
    if (what !== undefined) note(node, what);
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const statement of source.statements) {
    if (ts.isVariableStatement(statement) && !(statement.declarationList.flags & ts.NodeFlags.Const)) {
      note(statement, 'a variable of the whole file');
    }
  }
  return found;
}

function impureUse(node: ts.Node): string | undefined {
  if (ts.isPropertyAccessExpression(node)) {
    const used = node.getText().replace(/\s/g, '');
    return ['Date.now', 'Math.random', 'performance.now'].includes(used) ? used : undefined;
  }
  const isDate = (called: ts.Expression) => ts.isIdentifier(called) && called.text === 'Date';
  if (ts.isNewExpression(node) && isDate(node.expression) && !node.arguments?.length) return 'new Date()';
  if (ts.isCallExpression(node) && isDate(node.expression)) return 'Date()';
  return undefined;
}

function bareTodos({ path, text }: HouseFile): readonly string[] {
  return text.split('\n').flatMap((line, index) => {
    const unfinished = /\b(TODO|FIXME|XXX|HACK)\b(?!\([\w-]+\): \S+ \S+)/.test(line);
    const isThisCheck = path === 'test/house/tidy-code.test.ts';
    return unfinished && !isThisCheck ? [`${path}:${index + 1}: ${line.trim()}`] : [];
  });
}

/** Folder and file names that end in a word which fits anything. */
function saysNothing(path: string): boolean {
  const names = path.replace(/(\.test)?\.\w+$/, '').split('/');
  return names.some((name) => /(^|[-.])(utils?|helpers?|managers?|common|types|misc|info)$/i.test(name));
}
