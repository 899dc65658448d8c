import type { BodyOf } from '../../contract/index.js';
import { machineFlaws, recipeFlaws } from '../../core/day/index.js';
import { readStringKey, type StringSpec } from '../../core/sets/index.js';
import type { Check } from './save-record.js';
import { asMachine, asWire, byName, recipesOf } from './shop-parts.js';

/** A core wire is judged by a standard's table; recipes made of a wire are not to be falsified by a change of it. */
export const wireFits: Check<'wire'> = async (tx, { id, body }) => {
  if (body.use === 'core' && body.strengthTable === undefined)
    return { code: 'wire.without-strength', name: body.name };
  if (!(await tx.records.get('wire', id))) return undefined;
  const wires = (await tx.records.all('wire')).map((wire) => (wire.id === id ? { ...wire, body } : wire));
  const recipes = recipesOf(await tx.records.all('recipe'), byName<'wire'>(wires));
  const own = recipeFlaws({ recipes, wires: wires.map(asWire) }).filter(
    (flaw) => flaw.kind === 'wire-differs' && flaw.wireId === body.name,
  );
  return own.length > 0 ? { code: 'wire.recipes-differ', name: body.name, flaws: own } : undefined;
};

/** A machine whose figures contradict themselves, or whose day ends after midnight. */
export const machineIsSound: Check<'machine'> = async (tx, { body }) => {
  const [settled] = await tx.records.all('settings');
  const rules = settled?.body.rules ?? { dayStartsAtMinute: 0 };
  const flaws = machineFlaws({ machines: [asMachine({ body })], rules });
  return flaws.length > 0 ? { code: 'machine.flawed', name: body.name, flaws } : undefined;
};

/** The shop is settled in one record; its day must leave every machine an end before midnight. */
export const settingsFit: Check<'settings'> = async (tx, { id, body }) => {
  const other = (await tx.records.all('settings')).find((each) => each.id !== id);
  if (other) return { code: 'settings.already', id: other.id };
  const machines = (await tx.records.all('machine')).map(asMachine);
  const flaws = machineFlaws({ machines, rules: body.rules });
  return flaws.length > 0 ? { code: 'settings.flawed', flaws } : undefined;
};

/** A bin that is kept filled says with what. */
export const binKnowsItsKind: Check<'bin'> = async (_, { body: { name, stringKey, reorderLevel } }) => {
  if (stringKey === undefined)
    return reorderLevel > 0 ? { code: 'bin.level-without-kind', name, reorderLevel } : undefined;
  return readStringKey(stringKey) ? undefined : { code: 'bin.kind-unreadable', name, stringKey };
};

/** Where stretching lengths are given, each string has one, and none is shorter than what sounds of it. */
export const instrumentIsWhole: Check<'instrument'> = async (_, { body }) => {
  const { name, scaleLengthsM, stretchingLengthsM } = body;
  if (!stretchingLengthsM) return undefined;
  if (stretchingLengthsM.length !== scaleLengthsM.length)
    return {
      code: 'instrument.lengths-do-not-match',
      name,
      scales: scaleLengthsM.length,
      stretching: stretchingLengthsM.length,
    };
  const short = stretchingLengthsM.findIndex((lengthM, at) => lengthM < (scaleLengthsM[at] ?? 0));
  return short < 0 ? undefined : { code: 'instrument.stretching-too-short', name, position: short + 1 };
};

/** Every string of a set can be one that this shop would make. */
export const setIsPlausible: Check<'set'> = async (tx, { body: { name, strings } }) => {
  const [settled] = await tx.records.all('settings');
  for (const [at, spec] of strings.entries()) {
    const because = whyImplausible(spec, settled?.body.rules);
    if (because) return { code: 'set.string-implausible', name, position: at + 1, because, ...spec };
  }
  return undefined;
};

type Rules = BodyOf<'settings'>['rules'];

function whyImplausible(spec: StringSpec, rules: Rules | undefined): string | undefined {
  if ((spec.kind === 'plain') !== (spec.material === 'plain-steel')) return 'material';
  if (!rules) return undefined;
  if (spec.kind === 'plain' && spec.gaugeThou > rules.thickestPlainThou) return 'too-thick-plain';
  return spec.kind === 'wound' && spec.gaugeThou < rules.thinnestWoundThou ? 'too-thin-wound' : undefined;
}
