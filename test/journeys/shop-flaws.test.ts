import { describe, expect, it } from 'vitest';
import { demoWorkshop } from '../../demo/index.js';
import type { Shop } from '../../src/core/day/index.js';
import { shopFlaws } from '../../src/core/day/index.js';
import type { Machine } from '../../src/core/winding/index.js';

const sound = demoWorkshop();
const flawsOf = (change: Partial<Shop>) => shopFlaws({ ...sound, ...change });

const withMachine = (id: string, change: Partial<Machine>): Partial<Shop> => ({
  machines: sound.machines.map((machine) =>
    machine.id === id ? ({ ...machine, ...change } as Machine) : machine,
  ),
});

describe('a shop', () => {
  it('that is sound has no flaw', () => {
    expect(shopFlaws(sound)).toEqual([]);
  });

  it('has one where something names what is not there', () => {
    const [spool] = sound.spools;
    const [first] = sound.setUpNow;
    expect(flawsOf({ spools: [{ ...spool!, wireId: 'unheard of' }] })).toEqual([
      { kind: 'names-nothing', where: `spool ${spool!.id}`, what: 'wire', name: 'unheard of' },
    ]);
    expect(flawsOf({ setUpNow: [{ ...first!, recipeId: 'none' }] })).toEqual([
      { kind: 'names-nothing', where: `setUpNow of ${first!.machineId}`, what: 'recipe', name: 'none' },
    ]);
    expect(flawsOf({ bins: [] }).length).toBe(sound.strings.length);
  });

  it('has one where two of a kind bear one name', () => {
    expect(flawsOf({ machines: [...sound.machines, sound.machines[0]!] })).toEqual([
      { kind: 'named-twice', what: 'machine', name: sound.machines[0]!.id },
    ]);
    const again = { ...sound.sets[0]!, id: 'another', name: sound.sets[0]!.name.toUpperCase() };
    expect(flawsOf({ sets: [...sound.sets, again] })).toEqual([
      { kind: 'named-twice', what: 'stock set', name: sound.sets[0]!.name.toLowerCase() },
    ]);
    expect(flawsOf({ setUpNow: [sound.setUpNow[0]!, sound.setUpNow[0]!] })).toMatchObject([
      { kind: 'named-twice', what: 'set-up of machine' },
    ]);
  });

  it('has one where a recipe does not agree with the wires that it names', () => {
    const wound = sound.recipes.find(({ wrapWireIds }) => wrapWireIds.length === 1)!;
    expect(flawsOf({ recipes: [{ ...wound, wrapWireIds: [] }], setUpNow: [] })).toEqual([
      { kind: 'wraps-miscounted', recipeId: wound.id, layers: 1, wires: 0 },
    ]);
    const thicker = sound.wires.map((wire) =>
      wire.id === wound.coreWireId ? { ...wire, sizeM: wire.sizeM * 1.01 } : wire,
    );
    expect(flawsOf({ recipes: [wound], setUpNow: [], wires: thicker })).toEqual([
      { kind: 'wire-differs', recipeId: wound.id, wireId: wound.coreWireId, part: 'size' },
    ]);
    expect(flawsOf({ recipes: [{ ...wound, wrapWireIds: [wound.coreWireId] }], setUpNow: [] })).toMatchObject(
      [{ kind: 'wire-differs', part: 'use' }],
    );
  });

  it('has one where a machine contradicts itself or the day', () => {
    expect(flawsOf(withMachine('wren', { gaugesThou: { least: 90, most: 8 } }))).toEqual([
      { kind: 'limits-crossed', machineId: 'wren', limits: 'gaugesThou' },
    ]);
    const gear = sound.machines.find((machine) => machine.kind === 'winder' && machine.drive === 'gear')!;
    if (gear.kind !== 'winder' || gear.drive !== 'gear') throw new Error('a gear machine has a dial');
    const backwards = gear.dialTable.toReversed();
    expect(flawsOf(withMachine(gear.id, { dialTable: backwards } as Partial<Machine>))).toEqual([
      { kind: 'dial-table-unusable', machineId: gear.id },
    ]);
    const tillMidnight = 1440 - sound.rules.dayStartsAtMinute;
    expect(flawsOf(withMachine('wren', { minutesPerDay: tillMidnight }))).toEqual([]);
    expect(flawsOf(withMachine('wren', { minutesPerDay: tillMidnight + 1 }))).toEqual([
      { kind: 'day-past-midnight', machineId: 'wren', endsAtMinute: 1441 },
    ]);
  });
});
