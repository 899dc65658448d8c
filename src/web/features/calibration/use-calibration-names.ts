import type { CalibrationView } from '../../../contract/index.js';
import { ALLOYS } from '../../../core/materials/index.js';
import { useAllRecords } from '../../api/use-records.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';

type Family = CalibrationView['families'][number]['family'];

/** What ids and keys of the calibration are called. */
export function useCalibrationNames(view: CalibrationView) {
  const words = useWords(CALIBRATION_WORDS);
  const machines = useAllRecords('machine').data ?? [];
  const recipes = new Map(view.recipes.map(({ recipeId, name }) => [recipeId, name]));
  const machineNames = new Map(machines.map(({ id, body }) => [id, body.name]));
  const family = ({ coreShape, wrapAlloy, wrapBand }: Family): string =>
    words.family(coreShape, ALLOYS[wrapAlloy].name, wrapBand);
  const familyNames = new Map(view.families.map((each) => [each.key, family(each.family)]));
  return {
    machine: (id: string) => machineNames.get(id) ?? words.formerMachine,
    /** `ID version N` is how strings of an earlier construction are told apart. */
    recipe: (id: string) => {
      const [recipeId = '', , version] = id.split(' ');
      const name = recipes.get(recipeId) ?? words.formerRecipe;
      return version === undefined ? name : words.earlier(name, version);
    },
    recipeId: (id: string) => id.split(' ')[0] ?? id,
    family,
    familyOfKey: (key: string) => familyNames.get(key) ?? key,
  };
}
