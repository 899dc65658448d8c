import { Checkbox, NativeSelect, TextInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import type { QualityView } from '../../../contract/index.js';
import { useMe } from '../../api/session.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';
import type { QualitySearch } from './asked-of.js';

interface FilterProps {
  readonly view: QualityView;
  readonly search: QualitySearch;
}

/** Which runs the room shows. It stands in the address, so that what one found can be sent on. */
export function FilterPart({ view, search }: FilterProps) {
  const words = useWords(QUALITY_WORDS).filter;
  const me = useMe();
  const navigate = useNavigate();
  const go = (change: QualitySearch) =>
    void navigate({
      to: '/quality',
      search: kept({ ...search, run: undefined, ...change }),
      replace: true,
      resetScroll: false,
    });
  const { machines, recipes, lots, instruments } = view.choices;
  const choice = (
    field: 'machine' | 'recipe' | 'lot' | 'instrument',
    named: readonly { readonly id: string; readonly name: string }[],
  ) => (
    <NativeSelect
      label={words[field]}
      value={search[field] ?? ''}
      onChange={(event) => go({ [field]: event.currentTarget.value })}
      data={[
        { value: '', label: words.all[field] },
        ...withChosen(named, search[field]).map(({ id, name }) => ({ value: id, label: name })),
      ]}
    />
  );
  return (
    <search aria-label={words.title} className={desk.narrow}>
      {choice('machine', machines)}
      {choice('recipe', recipes)}
      {choice('lot', lots)}
      {choice(
        'instrument',
        instruments.map((name) => ({ id: name, name })),
      )}
      <TextInput
        type="date"
        label={words.from}
        value={search.from ?? view.from}
        onChange={(event) => go({ from: event.currentTarget.value })}
      />
      <TextInput
        type="date"
        label={words.until}
        value={search.until ?? view.until}
        onChange={(event) => go({ until: event.currentTarget.value })}
      />
      {me.person.roles.includes('winder') && (
        <Checkbox
          className={desk.loose}
          label={words.mine}
          checked={search.mine === 'yes'}
          onChange={(event) => go({ mine: event.currentTarget.checked ? 'yes' : '' })}
        />
      )}
      <div className={desk.loose}>
        <Button onClick={() => void navigate({ to: '/quality', search: {}, resetScroll: false })}>
          {words.everything}
        </Button>
      </div>
    </search>
  );
}

/** An address may name what no run of the period has. */
const withChosen = (
  named: readonly { readonly id: string; readonly name: string }[],
  chosen: string | undefined,
) =>
  chosen === undefined || chosen === '' || named.some(({ id }) => id === chosen)
    ? named
    : [...named, { id: chosen, name: chosen }];

/** Without what says nothing. */
const kept = (search: { readonly [Field in keyof QualitySearch]: string | undefined }): QualitySearch =>
  Object.fromEntries(Object.entries(search).filter(([, value]) => value !== undefined && value !== ''));
