import { LIVES } from '../src/core/stock/index.js';

interface Life {
  readonly of: string;
  readonly initial: string;
  readonly steps: Readonly<Record<string, { readonly from: readonly string[]; readonly to: string }>>;
}

/** The page of the handbook that draws the life of every record that has one. */
export const livesPage = (lives: readonly Life[] = Object.values(LIVES)): string =>
  [
    '# Where a record can stand',
    '',
    'Some records have a life: they stand somewhere, and steps lead them on. A step that is not drawn here is refused, and',
    'the refusal names the steps that may be taken. Drawn from the program by `node scripts/draw-lives.mjs`.',
    ...lives.flatMap((life) => ['', `## ${titleOf(life)}`, '', ...drawing(life), '', ...table(life)]),
    '',
  ].join('\n');

const titleOf = ({ of }: Life): string => `A ${of.replaceAll('-', ' ')}`.replace(/^A (?=[aeio])/, 'An ');

/** Each state once, with the steps that lead out of it; the first state on top. */
function drawing(life: Life): readonly string[] {
  const arrows = Object.entries(life.steps).flatMap(([step, { from, to }]) =>
    from.map((state) => `  ${nameOf(state)} --> ${nameOf(to)}: ${step}`),
  );
  const ends = statesOf(life).filter((state) => stepsOut(life, state).length === 0);
  return [
    '```mermaid',
    'stateDiagram-v2',
    ...statesOf(life).map((state) => `  state "${state}" as ${nameOf(state)}`),
    `  [*] --> ${nameOf(life.initial)}`,
    ...arrows,
    ...ends.map((state) => `  ${nameOf(state)} --> [*]`),
    '```',
  ];
}

/** The same to read: what can be done from where. */
const table = (life: Life): readonly string[] => [
  '| it stands at | steps that may be taken |',
  '| --- | --- |',
  ...statesOf(life).map(
    (state) => `| ${state} | ${stepsOut(life, state).join(', ') || 'none: its life has ended'} |`,
  ),
];

const statesOf = ({ initial, steps }: Life): readonly string[] => [
  ...new Set([initial, ...Object.values(steps).flatMap(({ from, to }) => [...from, to])]),
];

const stepsOut = ({ steps }: Life, state: string): readonly string[] =>
  Object.entries(steps).flatMap(([step, { from, to }]) =>
    from.includes(state) ? [`${step} (to ${to})`] : [],
  );

/** A name that the drawing program takes. */
const nameOf = (state: string): string => state.replaceAll('-', '_');
