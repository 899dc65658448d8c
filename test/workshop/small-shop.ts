import { type InputOf, permissionsOf, type Role, workshopFaultWords } from '../../src/contract/index.js';
import type { Result } from '../../src/core/foundation/index.js';
import type { Recipe } from '../../src/core/recipes/index.js';
import type { Machine } from '../../src/core/winding/index.js';
import type { Balance, LedgerReader, Store } from '../../src/store/index.js';
import {
  type Actor,
  type AnswerOf,
  type AnyUseCase,
  type Clock,
  newId,
  perform,
  receiveSpool,
  saveRecipe,
  type WorkshopFault,
} from '../../src/workshop/index.js';
import { BENCH, bronze36, GEAR, PLAIN_12, SERVO } from '../fixtures/winders.js';
import type { TestEngine } from '../store/harness.js';

/** A small invented shop in a store of its own, and ways to ask things of it. */
export class SmallShop {
  readonly wires = { core: newId(), wrap: newId(), plain: newId() };
  readonly machines = { servo: newId(), gear: newId(), bench: newId() };
  readonly bins = { first: newId(), second: newId(), third: newId(), plain12: newId() };
  readonly recipes = { bronze36: newId(), plain12: newId() };
  readonly winder = newId();
  readonly clock: Clock = tickingClock();

  private constructor(readonly store: Store) {}

  static async open(engine: TestEngine): Promise<SmallShop> {
    const shop = new SmallShop(await engine.open());
    await shop.furnish();
    return shop;
  }

  /** Somebody of a role. */
  as(...roles: readonly Role[]): Actor {
    return { by: `person/${this.winder}`, personId: this.winder, permissions: permissionsOf(roles) };
  }

  /** Asks as the owner, and gives what comes: answer or fault. */
  ask<Which extends AnyUseCase>(
    useCase: Which,
    input: InputOf<Which['definition']>,
    by: { readonly actor?: Actor; readonly requestId?: string } = {},
  ): Promise<Result<AnswerOf<Which>, WorkshopFault>> {
    return perform(this.store, useCase, { actor: this.as('owner'), clock: this.clock, newId, input, ...by });
  }

  /** Asks, and insists on an answer. */
  async done<Which extends AnyUseCase>(
    useCase: Which,
    input: InputOf<Which['definition']>,
  ): Promise<AnswerOf<Which>> {
    const result = await this.ask(useCase, input);
    if (!result.ok) throw new Error(`${useCase.definition.name}: ${JSON.stringify(result.fault)}`);
    return result.value;
  }

  /** Asks, and insists on a refusal in good words that leaves every record, movement and event as it was. */
  async refused<Which extends AnyUseCase>(
    useCase: Which,
    input: InputOf<Which['definition']>,
    by: { readonly actor?: Actor } = {},
  ): Promise<WorkshopFault> {
    const before = await this.everything();
    const result = await this.ask(useCase, input, by);
    if (result.ok) throw new Error(`${useCase.definition.name} was done: ${JSON.stringify(result.value)}`);
    const after = await this.everything();
    if (after !== before) throw new Error(`${useCase.definition.name} was refused and yet changed something`);
    insistOnWords(result.fault);
    return result.fault;
  }

  balances(query: Parameters<LedgerReader['balances']>[0]): Promise<readonly Balance[]> {
    return this.store.read(({ ledger }) => ledger.balances(query));
  }

  /** A spool with so much wire on it, as received. */
  async spool(wireId: string, netKg: number, name = `spool ${newId()}`): Promise<string> {
    const id = newId();
    await this.done(receiveSpool, { id, wireId, name, lot: 'H1', grossKg: netKg + 0.5, tareKg: 0.5 });
    return id;
  }

  /** All that could have changed, as one text. */
  everything(): Promise<string> {
    return this.store.read(async ({ records, ledger, journal, events }) =>
      JSON.stringify([
        await events.last(),
        await ledger.balances({}),
        (await journal.list({ limit: 500 })).items.length,
        await records.all('run'),
        await records.all('spool'),
        await records.all('string-lot'),
        await records.all('recipe'),
      ]),
    );
  }

  private async furnish(): Promise<void> {
    const at = '2026-03-02T07:00:00.000Z';
    await this.store.write(async ({ records }) => {
      const insert = (kind: 'wire' | 'machine' | 'bin', id: string, body: object) =>
        records.insert(kind, { id, body: body as never, at });
      await insert('wire', this.wires.core, wire('core', 'hex core 16', 16));
      await insert('wire', this.wires.plain, { ...wire('core', 'round steel 12', 12), shape: 'round' });
      await insert('wire', this.wires.wrap, WRAP);
      for (const [id, machine] of [
        [this.machines.servo, SERVO],
        [this.machines.gear, GEAR],
        [this.machines.bench, BENCH],
      ] as const)
        await insert('machine', id, withoutId(machine));
      await insert('bin', this.bins.first, { name: 'A1', walkOrder: 1, reorderLevel: 0 });
      await insert('bin', this.bins.second, { name: 'A2', walkOrder: 2, reorderLevel: 0 });
      await insert('bin', this.bins.third, { name: 'A3', walkOrder: 4, reorderLevel: 0 });
      const stringKey = '12 plain plain-steel ball 1000 mm';
      await insert('bin', this.bins.plain12, { name: 'B1', walkOrder: 3, reorderLevel: 0, stringKey });
    });
    const { core, wrap, plain } = this.wires;
    await this.done(saveRecipe, {
      id: this.recipes.bronze36,
      body: recipe('bronze 36', bronze36('hex'), core, [wrap]),
    });
    await this.done(saveRecipe, {
      id: this.recipes.plain12,
      body: recipe('plain 12', PLAIN_12, plain, []),
    });
  }
}

export const W36 = {
  gaugeThou: 36,
  kind: 'wound',
  material: 'phosphor-bronze',
  end: 'ball',
  lengthM: 1,
} as const;

export const P12 = { ...W36, gaugeThou: 12, kind: 'plain', material: 'plain-steel' } as const;

const WRAP = {
  name: 'bronze 10',
  use: 'wrap',
  shape: 'round',
  sizeM: 0.254e-3,
  alloy: 'phosphor-bronze',
  priceMinorPerKg: 3000,
};

const wire = (use: 'core', name: string, thou: number) => ({
  name,
  use,
  shape: 'hex',
  sizeM: thou * 25.4e-6,
  alloy: 'music-wire',
  strengthTable: 'astm-a228',
  priceMinorPerKg: 2000,
});

export function recipe(name: string, made: Recipe, coreWireId: string, wrapWireIds: string[]) {
  const { gaugeThou, material, construction } = made;
  return {
    name,
    gaugeThou,
    material,
    construction: construction as never,
    coreWireId,
    wrapWireIds,
    note: '',
  };
}

/** Words that name a fact which the fault does not hold would say so to people too. */
function insistOnWords(fault: WorkshopFault): void {
  if (fault.code.startsWith('test.')) return;
  const { what, mend } = workshopFaultWords(fault);
  for (const sentence of [what, mend]) {
    const good =
      /^["“A-Z0-9].*[.!]$/s.test(sentence) && !/undefined|null|NaN|\[object|\(test\./.test(sentence);
    if (!good || what.includes(`(${fault.code})`)) throw new Error(`${fault.code} is told as: ${sentence}`);
  }
}

const withoutId = ({ id: _, ...machine }: Machine) => machine;

/** A second later every time it is looked at. */
function tickingClock(): Clock {
  let moment = Date.parse('2026-03-02T08:00:00.000Z');
  return {
    now: () => {
      moment += 1000;
      return new Date(moment).toISOString();
    },
  };
}
