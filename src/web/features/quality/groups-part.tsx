import { NativeSelect } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import { useId } from 'react';
import type { QualityView } from '../../../contract/index.js';
import { GROUPINGS, type Grouping } from '../../../core/quality/index.js';
import desk from '../../parts/desk.module.css';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';
import { groupingOf, type QualitySearch } from './asked-of.js';
import { clearestFirst, isProven } from './clearest-first.js';
import { nameIn } from './names.js';
import { useMeasureScale } from './use-measure-scale.js';

interface GroupsProps {
  readonly view: QualityView;
  readonly search: QualitySearch;
}

type Group = QualityView['groups'][number];

/** Machines, recipes, lots of wire or instruments, each against all others. */
export function GroupsPart({ view, search }: GroupsProps) {
  const words = useWords(QUALITY_WORDS).groups;
  const figures = useFigures();
  const navigate = useNavigate();
  // What is shown may still be the answer of before.
  const { by } = view;
  const scale = useMeasureScale(view.measure);
  const id = useId();
  const groups = clearestFirst(view.groups);
  const columns: readonly LongColumn<Group>[] = [
    {
      heading: words.by[by],
      share: 4,
      cell: ({ name }) => (
        <Link to="/quality" search={narrowed(search, by, name)} resetScroll={false}>
          {nameOf(view, by, name)}
        </Link>
      ),
    },
    { heading: words.columns.runs, share: 1, figures: true, cell: ({ runs }) => figures.number(runs) },
    { heading: words.columns.mean, share: 2, figures: true, cell: ({ mean }) => scale.told(mean) },
    {
      heading: words.columns.spread,
      share: 2,
      figures: true,
      cell: ({ spread }) => (spread === undefined ? '' : scale.told(spread)),
    },
    {
      heading: words.columns.against,
      share: 4,
      figures: true,
      cell: ({ against }) =>
        against
          ? words.against(scale.told(against.difference), scale.told(against.from), scale.told(against.to))
          : '',
    },
    {
      heading: words.columns.verdict,
      share: 3,
      cell: (group) => (group.against ? (isProven(group) ? words.differs : words.alike) : words.tooFew),
    },
  ];
  return (
    <section aria-labelledby={id} className={desk.part}>
      <h2 id={id}>{words.title}</h2>
      <NativeSelect
        className={desk.narrowField}
        label={words.compareBy}
        value={groupingOf(search)}
        onChange={(event) =>
          void navigate({
            to: '/quality',
            search: { ...search, by: event.currentTarget.value },
            resetScroll: false,
          })
        }
        data={GROUPINGS.map((value) => ({ value, label: words.by[value] }))}
      />
      <LongTable caption={words.title} columns={columns} rows={groups} rowKey={({ name }) => name} />
      <p className="quiet small">{words.method(groups.length)}</p>
    </section>
  );
}

const nameOf = ({ choices }: QualityView, by: Grouping, name: string): string =>
  by === 'instrument' ? name : nameIn(choices[`${by}s`], name);

function narrowed({ run: _, ...search }: QualitySearch, by: Grouping, name: string): QualitySearch {
  return { ...search, [by]: name };
}
