import { NativeSelect, TextInput } from '@mantine/core';
import { getRouteApi, Link } from '@tanstack/react-router';
import { useState } from 'react';
import { materialInWords } from '../../../contract/index.js';
import { RECIPE_LIFE } from '../../../core/stock/index.js';
import { formatGauge } from '../../../core/units/index.js';
import { useMay } from '../../api/session.js';
import { useAllRecords } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { Button, buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { RoomTitle } from '../../parts/room-title.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { MATERIALS, type RecipeRecord, type RecipeWish, wishedRecipes } from './recipe-list.js';
import { RecipeState } from './recipe-state.js';
import { useWireNames } from './use-wire-names.js';

const route = getRouteApi('/recipes');

export function RecipesRoom() {
  const words = useWords(RECIPES_WORDS);
  const may = useMay();
  const recipes = useAllRecords('recipe');
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={words.title} />
          <p className={desk.lead}>{words.lead}</p>
        </div>
        <div className={desk.row}>
          <Link to="/calibration" className={buttonClass()}>
            {words.calibration}
          </Link>
          {may('recipe.edit') && (
            <Link to="/recipes/$id" params={{ id: 'new' }} className={buttonClass('main')}>
              {words.newOne}
            </Link>
          )}
        </div>
      </div>
      <Asked question={recipes} what={words.what}>
        {(all) => (all.length === 0 ? <Empty what={words.nothingYet} /> : <RecipeBook recipes={all} />)}
      </Asked>
    </div>
  );
}

function RecipeBook({ recipes }: { readonly recipes: readonly RecipeRecord[] }) {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  const wireName = useWireNames();
  const { gauge = '', material = '', state = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const [text, setText] = useState('');
  const wish: RecipeWish = { gauge, material, state, text };
  const shown = wishedRecipes(recipes, wish);
  const narrow = (change: Partial<Record<'gauge' | 'material' | 'state', string>>) =>
    void navigate({
      replace: true,
      search: Object.fromEntries(
        Object.entries({ gauge, material, state, ...change }).filter(([, value]) => value !== ''),
      ),
    });
  const clear = () => {
    setText('');
    narrow({ gauge: '', material: '', state: '' });
  };
  return (
    <div className={desk.stack}>
      <search className={desk.narrow}>
        <TextInput
          label={words.gauge}
          placeholder={words.gaugeHint}
          value={gauge}
          onChange={(event) => narrow({ gauge: event.currentTarget.value })}
        />
        <NativeSelect
          label={words.material}
          value={material}
          onChange={(event) => narrow({ material: event.currentTarget.value })}
          data={[
            { value: '', label: words.anyMaterial },
            ...MATERIALS.map((value) => ({ value, label: materialInWords(value) })),
          ]}
        />
        <NativeSelect
          label={words.state}
          value={state}
          onChange={(event) => narrow({ state: event.currentTarget.value })}
          data={[
            { value: '', label: words.anyState },
            ...STATES.map((value) => ({ value, label: words.states[value] ?? value })),
          ]}
        />
        <TextInput label={words.find} value={text} onChange={(event) => setText(event.currentTarget.value)} />
        <p role="status" className={`quiet ${desk.loose}`}>
          {words.counted(shown.length, recipes.length)}
        </p>
      </search>
      {shown.length === 0 ? (
        <Empty what={words.nothing}>
          <Button onClick={clear}>{words.clear}</Button>
        </Empty>
      ) : (
        <LongTable
          caption={words.title}
          columns={columnsOf(words, figures, wireName)}
          rows={shown}
          rowKey={({ id }) => id}
        />
      )}
    </div>
  );
}

const STATES = [...new Set([RECIPE_LIFE.initial, ...Object.values(RECIPE_LIFE.steps).map(({ to }) => to)])];

const columnsOf = (
  { columns }: (typeof RECIPES_WORDS)['en'],
  figures: Figures,
  wireName: (id: string) => string,
): readonly LongColumn<RecipeRecord>[] => [
  {
    heading: columns.name,
    share: 3,
    cell: ({ id, body }) => (
      <Link to="/recipes/$id" params={{ id }}>
        {body.name}
      </Link>
    ),
  },
  { heading: columns.gauge, figures: true, cell: ({ body }) => formatGauge(body.gaugeThou) },
  { heading: columns.core, share: 2, cell: ({ body }) => wireName(body.coreWireId) },
  {
    heading: columns.wrap,
    share: 3,
    cell: ({ body }) => body.wrapWireIds.map(wireName).join(' + ') || '—',
  },
  { heading: columns.state, share: 2, cell: ({ state }) => <RecipeState state={state} /> },
  { heading: columns.version, figures: true, cell: ({ version }) => version },
  { heading: columns.changed, share: 2, cell: ({ updatedAt }) => figures.date(updatedAt.slice(0, 10)) },
];
