import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { dirname, posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readLadder } from '../../scripts/house/ladder.mjs';
import { houseFile, houseFiles, rootPath } from './the-house.js';

const ladder = readLadder();

describe('docs/architecture.md', () => {
  const { text } = houseFile('docs/architecture.md');

  it('shows the ladder of layers.json, room by room', () => {
    const shown = rowsUnder(text, '## The ladder').map(([room, holds]) => `${room}: ${holds}`);
    const remedy = 'Copy the order and the words from layers.json into the table under "The ladder"';
    expect(shown, remedy).toEqual(
      ladder.rooms.map(({ name, holds, later }) => `${name}: ${holds}${later ? ' (later)' : ''}`),
    );
  });

  it('shows the layers of layers.json and what each may use', () => {
    const shown = rowsUnder(text, '## The layers').map(([layer, uses, holds]) =>
      [layer, uses, holds].join(': '),
    );
    const remedy = 'Copy the names, uses and words from layers.json into the table under "The layers"';
    expect(shown, remedy).toEqual(
      ladder.layers.map(
        ({ name, uses, holds, later }) =>
          `${name}: ${name === 'test' ? 'all of them' : uses.join(', ') || 'nothing'}: ${holds}${later ? ' (later)' : ''}`,
      ),
    );
  });

  it('has a drawing that was made from the code as it stands', () => {
    const fresh = execFileSync(process.execPath, ['scripts/draw-architecture.mjs', '--print'], {
      cwd: rootPath('.'),
      encoding: 'utf8',
    });
    const drawn = houseFile('docs/architecture.svg').text;
    expect(fresh.length).toBeGreaterThan(1000);
    expect(drawn === fresh, 'Rooms or their imports changed: run `npm run draw`').toBe(true);
  });
});

describe('the documents', () => {
  const documents = houseFiles(
    ['README.md', 'CHANGELOG.md', 'docs'].filter((place) => existsSync(rootPath(place))),
    (path) => path.endsWith('.md'),
  );

  it('link only to files that exist', () => {
    const dead = documents.flatMap(({ path, text }) =>
      localLinks(text)
        .map((link) => posix.normalize(posix.join(dirname(path), link)))
        .filter((target) => !existsSync(rootPath(target)))
        .map((target) => `${path} -> ${target}`),
    );
    expect(dead, 'Correct the link, or write the page').toEqual([]);
  });

  it('list every decision in the index of decisions', () => {
    const index = houseFile('docs/decisions/README.md').text;
    const pages = documents.map(({ path }) => path).filter((path) => /^docs\/decisions\/\d{4}-/.test(path));
    expect(pages.length).toBeGreaterThan(0);
    const unlisted = pages.filter((path) => !index.includes(`(${posix.basename(path)})`));
    expect(unlisted, 'Add a line to docs/decisions/README.md').toEqual([]);
  });
});

describe('package.json', () => {
  const manifest = JSON.parse(houseFile('package.json').text) as {
    dependencies: Record<string, string>;
    devDependencies: Record<string, string>;
  };
  const needed = Object.keys(manifest.dependencies);

  it('names no package that ships without a reason in docs/decisions/0002-dependencies.md', () => {
    const rows = rowsUnder(houseFile('docs/decisions/0002-dependencies.md').text, '## What ships');
    const reasoned = rows.filter(([, does, instead]) => does && instead).map(([name]) => name);
    expect(needed.length).toBeGreaterThan(0);
    const remedy = 'Write what it does for us and what was considered instead, or remove the package';
    expect(
      needed.filter((name) => !reasoned.includes(name)),
      remedy,
    ).toEqual([]);
    expect(
      reasoned.filter((name) => name !== undefined && !needed.includes(name)),
      'Remove the row of a package that is gone',
    ).toEqual([]);
  });

  it('pins every package to one version', () => {
    const versions = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
    const loose = versions.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version));
    expect(loose, 'Write the exact version').toEqual([]);
  });
});

describe('the checks themselves', () => {
  it('read a table by its heading', () => {
    const page =
      '## One\n\n| a | b |\n| --- | --- |\n| `x` | y |\n\n## Two\n| c | d |\n|---|---|\n| no | no |\n';
    expect(rowsUnder(page, '## One')).toEqual([['x', 'y']]);
    expect(() => rowsUnder(page, '## Three')).toThrow('no heading');
  });

  it('see local links and leave others alone', () => {
    const page = '[a](b.md#part) ![c](<d e.svg>) [f](https://example.org/g.md) [h](#here) `[code](none.md)`';
    expect(localLinks(page)).toEqual(['b.md', 'd e.svg']);
  });
});

/** The body rows of the first table under a heading, each a list of cells without code marks. */
function rowsUnder(page: string, heading: string): readonly (readonly string[])[] {
  const lines = page.split('\n');
  const start = lines.indexOf(heading);
  if (start < 0) throw new Error(`The page has no heading '${heading}'.`);
  const after = lines.slice(start + 1);
  const end = after.findIndex((line) => line.startsWith('## '));
  const table = (end < 0 ? after : after.slice(0, end)).filter((line) => line.startsWith('|'));
  if (table.length < 3) throw new Error(`There is no table under '${heading}'.`);
  return table.slice(2).map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim().replaceAll('`', '')),
  );
}

function localLinks(page: string): readonly string[] {
  const prose = page.replace(/```[\s\S]*?```/g, '').replace(/`[^`\n]*`/g, '');
  return [...prose.matchAll(/\]\(<?([^)>]+?)>?\)/g)]
    .map((match) => (match[1] ?? '').replace(/#.*$/, ''))
    .filter((link) => link !== '' && !/^[a-z][a-z+.-]*:/i.test(link));
}
