import { describe, expect, it } from 'vitest';
import type { Alloy, AlloyId } from './alloy.js';
import { ALLOYS } from './alloys.js';
import { materialCautions } from './hazards.js';

const codesOf = (id: AlloyId): readonly string[] => materialCautions(ALLOYS[id]).map(({ code }) => code);
const withNickel = (holds: (alloy: Alloy) => boolean): readonly AlloyId[] =>
  Object.values(ALLOYS)
    .filter(holds)
    .map(({ id }) => id);

describe('cautions of materials', () => {
  it('say of all wire with nickel, stainless 304 among it, that its release was not tested', () => {
    const told = withNickel((alloy) => codesOf(alloy.id).includes('contains-nickel-release-not-tested'));
    expect([...told].sort()).toEqual([
      'nickel-copper',
      'nickel-iron',
      'nickel-plated-steel',
      'pure-nickel',
      'stainless-304',
    ]);
    expect(withNickel(({ constituents }) => constituents.includes('nickel'))).toEqual(told);
  });

  it('do not let stainless 430 pass as free of nickel: 0.75 % are tolerated', () => {
    expect(materialCautions(ALLOYS['stainless-430'])).toContainEqual({
      code: 'nickel-trace-release-not-tested',
      mostNickelMassShare: 0.0075,
      sources: ['reach-entry-27', 'en-1811'],
    });
  });

  it('give the limit in the air for dust of nickel: 1 mg/m3', () => {
    const dust = materialCautions(ALLOYS['pure-nickel']).find(({ code }) => code === 'dust-when-abraded');
    expect(dust).toMatchObject({ constituent: 'nickel', limitKgPerM3: { value: 1e-6, standing: 'printed' } });
  });

  it('tell of dust without a limit where none is on record', () => {
    expect(materialCautions(ALLOYS['music-wire'])).toEqual([
      { code: 'dust-when-abraded', constituent: 'iron' },
    ]);
  });

  it('warn of zinc fume and of ammonia where there is zinc, and only there', () => {
    for (const { id, constituents } of Object.values(ALLOYS)) {
      const zinc = constituents.includes('zinc');
      expect(codesOf(id).includes('zinc-fume-when-heated'), id).toBe(zinc);
      expect(codesOf(id).includes('ammonia-cracks-it'), id).toBe(zinc);
    }
  });

  it('are silent on nylon', () => {
    expect(materialCautions(ALLOYS.nylon)).toEqual([]);
  });
});
