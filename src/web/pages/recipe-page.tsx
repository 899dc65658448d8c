import { getRouteApi } from '@tanstack/react-router';
import { useAllRecords, useRecord } from '../api/use-records.js';
import { RecipeRoom } from '../features/recipes/recipe-room.js';
import { Asked } from '../parts/asked.js';
import { useWords } from '../words/language.js';
import { RECIPES_WORDS } from '../words/recipes.js';

const route = getRouteApi('/recipes/$id');

/** One recipe by the id of its record, or a new one. */
export function RecipePage() {
  const words = useWords(RECIPES_WORDS);
  const { id } = route.useParams();
  const isNew = id === 'new';
  const wires = useAllRecords('wire');
  const record = useRecord('recipe', id, { enabled: !isNew });
  return (
    <Asked question={wires} what={words.one}>
      {(all) =>
        isNew ? (
          <RecipeRoom key="new" wires={all} />
        ) : (
          <Asked question={record} what={words.one}>
            {(recipe) => <RecipeRoom key={id} wires={all} record={recipe} />}
          </Asked>
        )
      }
    </Asked>
  );
}
