import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sourcesDocument } from '../../scripts/sources-document.js';
import {
  ALLOYS,
  DIAMETER_TOLERANCES,
  materialCautions,
  SOURCES,
  type Source,
  STRENGTH_TABLES,
} from '../../src/core/materials/index.js';

interface Pedigree {
  readonly path: string;
  readonly sources: readonly string[];
  readonly standing: unknown;
  /** It holds a number of its own, and so must say how well that is founded. */
  readonly isFigure: boolean;
}

/** Everything in a tree of data that names its sources or its standing. */
function sourced(data: unknown, path: string): readonly Pedigree[] {
  if (typeof data !== 'object' || data === null) return [];
  const fields = data as Readonly<Record<string, unknown>>;
  const below = Object.entries(fields).flatMap(([key, value]) => sourced(value, `${path}/${key}`));
  if (!('sources' in fields) && !('standing' in fields)) return below;
  const sources = (fields.sources as readonly string[] | undefined) ?? [];
  const isFigure = 'value' in fields || 'minimumPa' in fields || 'least' in fields;
  return [{ path, sources, standing: fields.standing, isFigure }, ...below];
}

const all = [
  ...sourced(ALLOYS, 'alloys'),
  ...sourced(STRENGTH_TABLES, 'strength'),
  ...sourced(DIAMETER_TOLERANCES, 'tolerance'),
  ...sourced(Object.values(ALLOYS).map(materialCautions), 'cautions'),
];

describe('the list of sources', () => {
  it('stands in docs/sources.md as the data has it', () => {
    const page = readFileSync(new URL('../../docs/sources.md', import.meta.url), 'utf8');
    expect(page, 'out of date: run `npx tsx scripts/write-sources.ts`').toBe(sourcesDocument());
  });

  it('names every work once', () => {
    const works = Object.values<Source>(SOURCES).map(({ by, title }) => `${by}: ${title}`);
    expect(new Set(works).size).toBe(works.length);
  });

  it('says of every source what was read, and sends nobody to a shop', () => {
    for (const [key, source] of Object.entries<Source>(SOURCES)) {
      expect(source.read.length, key).toBeGreaterThan(3);
      expect(JSON.stringify(source), key).not.toMatch(/https?:|www\.|\.(com|net|org|info|it|kr)\b/i);
    }
  });
});

describe('the figures of materials', () => {
  it('are there to be checked', () => {
    expect(all.length).toBeGreaterThan(100);
  });

  it('each name sources that are on the list', () => {
    for (const { path, sources } of all) {
      expect(sources.length, path).toBeGreaterThan(0);
      for (const key of sources) expect(Object.keys(SOURCES), path).toContain(key);
    }
  });

  it('each have a standing, and only what is recalled may lack a page', () => {
    for (const { path, sources, standing } of all.filter(({ isFigure }) => isFigure)) {
      expect(['printed', 'derived', 'memory'], path).toContain(standing);
      const hasPage = sources.some((key) => key !== 'recalled');
      expect(hasPage || standing === 'memory', path).toBe(true);
    }
  });

  it('of each material are all three: density, modulus, expansion', () => {
    for (const material of Object.values(ALLOYS)) {
      for (const figure of [material.densityKgPerM3, material.youngsModulusPa, material.expansionPerK]) {
        expect(figure.value, material.id).toBeGreaterThan(0);
        expect(figure.u ?? 1, material.id).toBeGreaterThan(0);
      }
    }
  });
});
