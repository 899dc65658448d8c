import type { AlloyId } from '../materials/index.js';
import type { StringMaterial } from './recipe.js';

/** What a wound string is called after: the alloy of its outermost wrap. Plain strings have no wrap. */
const WRAP_ALLOY: Readonly<Record<Exclude<StringMaterial, 'plain-steel'>, AlloyId>> = {
  'nickel-plated-steel': 'nickel-plated-steel',
  'pure-nickel': 'pure-nickel',
  'stainless-steel': 'stainless-430',
  'phosphor-bronze': 'phosphor-bronze',
  'bronze-80-20': 'bronze-80-20',
};

/** Alloys that bear the same name with the player though their composition differs. */
const ALSO_CALLED: Readonly<Partial<Record<AlloyId, StringMaterial>>> = {
  'stainless-304': 'stainless-steel',
  'phosphor-bronze-8': 'phosphor-bronze',
};

/** The alloy that a string of this material is usually wrapped with; undefined for a plain string. */
export const wrapAlloyOf = (material: StringMaterial): AlloyId | undefined =>
  material === 'plain-steel' ? undefined : WRAP_ALLOY[material];

/** What a string wrapped with this alloy is called; undefined where the trade has no name for it among ours. */
export function materialOfWrapAlloy(alloy: AlloyId): StringMaterial | undefined {
  const usual = (Object.keys(WRAP_ALLOY) as (keyof typeof WRAP_ALLOY)[]).find(
    (material) => WRAP_ALLOY[material] === alloy,
  );
  return usual ?? ALSO_CALLED[alloy];
}

/** What a material is called: what it is, never a product's name (glossary of the trade). */
export const MATERIAL_NAMES: Readonly<Record<StringMaterial, string>> = {
  'plain-steel': 'steel',
  'nickel-plated-steel': 'nickel-plated steel',
  'pure-nickel': 'pure nickel',
  'stainless-steel': 'stainless steel',
  'phosphor-bronze': 'phosphor bronze',
  'bronze-80-20': '80/20 bronze',
};
