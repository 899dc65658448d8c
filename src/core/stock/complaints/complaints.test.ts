import { describe, expect, it } from 'vitest';
import { seededChance } from '../../foundation/index.js';
import { COMPLAINT_FAULTS, complaintFault } from './complaint-faults.js';
import { complaintRate, complaintSources, type StringsOut, type Traits } from './complaint-sources.js';

const out = (strings: number, traits: Traits): StringsOut => ({ strings, traits });
const times = (count: number, traits: Traits): readonly Traits[] =>
  Array.from({ length: count }, () => traits);

describe('the fault of a complaint', () => {
  it('is one of the list, whatever was written before there was one', () => {
    for (const fault of COMPLAINT_FAULTS) expect(complaintFault(fault)).toBe(fault);
    expect(['loose-wrap', 'false-pitch', 'broke', 'smells of fish'].map(complaintFault)).toEqual([
      'wrap-loose',
      'out-of-tune',
      'broke',
      'other',
    ]);
  });
});

describe('complaints by source', () => {
  it('come per thousand strings, with the exact interval: none of 3,689 is less than one in a thousand', () => {
    // -ln 0.025 = 3.6889 is the upper end for no event (Garwood 1936).
    const rate = complaintRate(0, 3689);
    expect(rate.perThousand).toBe(0);
    expect(rate.interval.from).toBe(0);
    expect(rate.interval.to).toBeCloseTo(1, 4);
    expect(complaintRate(6, 1500).perThousand).toBe(4);
  });

  it('name the one lot that they come from, and nothing where they fall evenly', () => {
    const sent = ['lot 1', 'lot 2', 'lot 3', 'lot 4'].flatMap((wire) =>
      ['wren', 'bench'].map((machine) => out(500, { wire, machine })),
    );
    const complained = [
      ...times(6, { wire: 'lot 2', machine: 'wren' }),
      ...times(6, { wire: 'lot 2', machine: 'bench' }),
      ...times(1, { wire: 'lot 1', machine: 'wren' }),
      ...times(1, { wire: 'lot 4', machine: 'bench' }),
    ];
    const [machines, wires] = complaintSources(sent, complained, seededChance(1));
    expect(machines).toMatchObject({ by: 'machine', p: 1 });
    expect(wires!.by).toBe('wire');
    expect(wires!.p).toBeLessThan(0.001);
    const [worst, ...others] = wires!.rates;
    expect(worst).toMatchObject({ name: 'lot 2', complaints: 12, strings: 1000, perThousand: 12 });
    expect(worst!.times).toBeCloseTo(12 / 14 / 0.25, 10);
    expect(worst!.p).toBeLessThan(0.001);
    for (const { p } of others) expect(p).toBeGreaterThan(0.5);
  });

  it('find a lot of wire though every string has two, and no other lot with it', () => {
    const sent = ['core 1', 'core 2'].flatMap((core) =>
      ['wrap 1', 'wrap 2', 'wrap 3'].map((wrap) => out(200, { wires: [core, wrap] })),
    );
    const complained = [
      ...times(6, { wires: ['core 1', 'wrap 3'] }),
      ...times(6, { wires: ['core 2', 'wrap 3'] }),
      ...times(1, { wires: ['core 1', 'wrap 1'] }),
    ];
    const [table] = complaintSources(sent, complained, seededChance(1));
    const [worst, ...others] = table!.rates;
    expect(worst).toMatchObject({ name: 'wrap 3', complaints: 12, strings: 400 });
    expect(worst!.times).toBeCloseTo(12 / (13 / 3), 10);
    // Twelve or more of 13 on a third of the strings, over five lots: the binomial tail by hand.
    expect(worst!.p).toBeCloseTo(5 * (13 * (1 / 3) ** 12 * (2 / 3) + (1 / 3) ** 13), 12);
    expect(table!.p).toBe(worst!.p);
    for (const { p } of others) expect(p).toBeGreaterThan(0.5);
  });

  it('say nothing of where so few come from, and leave out what is not known', () => {
    const sent = [out(300, { machine: 'wren' }), out(300, { machine: 'bench' }), out(900, {})];
    const [table] = complaintSources(sent, [...times(3, { machine: 'wren' }), {}], seededChance(1));
    expect(table).not.toHaveProperty('p');
    expect(table!.rates.map(({ name, complaints, strings }) => [name, complaints, strings])).toEqual([
      ['wren', 3, 300],
      ['bench', 0, 300],
    ]);
  });

  it('raise a false alarm over eight sorts of source in about one shop of twenty at most', () => {
    const chance = seededChance(7);
    const sorts = Array.from({ length: 8 }, (_, at) => `sort ${at}`);
    const sent = Array.from({ length: 120 }, () =>
      out(50, Object.fromEntries(sorts.map((sort) => [sort, `source ${chance.whole(1, 4)}`]))),
    );
    let alarms = 0;
    for (let shop = 0; shop < 150; shop++) {
      const complained = Array.from({ length: 12 }, () => chance.pick(sent).traits);
      if (complaintSources(sent, complained, chance).some(({ p }) => p !== undefined && p <= 0.05)) alarms++;
    }
    // 0.05 of 150 is 7.5; 15 or more would come up by chance in under 1 %.
    expect(alarms).toBeLessThan(15);
  });
});
