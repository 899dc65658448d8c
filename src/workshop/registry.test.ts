import { describe, expect, it } from 'vitest';
import { USE_CASES, useCaseNamed } from './registry.js';

describe('everything that can be asked of the shop', () => {
  const definitions = USE_CASES.map(({ definition }) => definition);

  it('has a name and a path of its own', () => {
    expect(definitions.length).toBeGreaterThan(40);
    expect(new Set(definitions.map(({ name }) => name)).size).toBe(definitions.length);
    expect(new Set(definitions.map(({ path }) => path)).size).toBe(definitions.length);
  });

  it.each(definitions)('$name is said in words and takes nothing that it does not know', (definition) => {
    expect(definition.name).toMatch(/^[a-z]+(-[a-z]+)+$/);
    expect(definition.path).toMatch(/^(\/[a-z]+(-[a-z]+)*)+$/);
    expect(definition.summary).toMatch(/^[A-Z].*[^.]$/);
    expect(definition.input).toMatchObject({ type: 'object', additionalProperties: false });
    expect(useCaseNamed(definition.name)?.definition).toBe(definition);
  });
});
