import { Link, type LinkProps } from '@tanstack/react-router';
import { useMay } from '../../api/session.js';
import { useRecords } from '../../api/use-records.js';
import { StateMark } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { TODAY_WORDS } from '../../words/today.js';
import styles from './needs-part.module.css';

/** How a shop of one's own begins: what is to be entered, in which order, and what of it is there. Gone once there is work to do. */
export function FirstSteps() {
  const may = useMay();
  const isKeeper = may('shop.edit');
  // Without a recipe nothing can be made, and without a bin it could be laid nowhere: with both the shop is past its beginning.
  const recipes = useHas('recipe', isKeeper);
  const bins = useHas('bin', isKeeper);
  if (!isKeeper || recipes === undefined || bins === undefined || (recipes && bins)) return null;
  return <Steps recipes={recipes} bins={bins} />;
}

type Step = keyof (typeof TODAY_WORDS)['en']['firstSteps'];

interface StepsProps {
  readonly recipes: boolean;
  readonly bins: boolean;
}

function Steps({ recipes, bins }: StepsProps) {
  const words = useWords(TODAY_WORDS);
  const has: Readonly<Record<Step, boolean | undefined>> = {
    rules: useHas('settings'),
    wires: useHas('wire'),
    machines: useHas('machine'),
    recipes,
    bins,
    spools: useHas('spool'),
    sets: useHas('set'),
  };
  return (
    <section aria-labelledby="first-steps" className={styles.urgency}>
      <h2 id="first-steps">{words.firstStepsTitle}</h2>
      <p>{words.firstStepsLead}</p>
      <ol className={styles.list}>
        {(Object.keys(PLACES) as Step[]).map((step) => (
          <li key={step} className={styles.need}>
            <p className={styles.title}>
              <Link {...PLACES[step]}>{words.firstSteps[step][0]}</Link>
            </p>
            <div className={styles.sentence}>
              <p>{words.firstSteps[step][1]}</p>
              <StateMark tone={has[step] ? 'done' : 'waits'}>
                {has[step] ? words.isThere : words.isMissing}
              </StateMark>
            </div>
          </li>
        ))}
      </ol>
      <p className="quiet">{words.firstStepsElse}</p>
    </section>
  );
}

const PLACES: Readonly<Record<Step, LinkProps>> = {
  rules: { to: '/shop/$part', params: { part: 'rules' } },
  wires: { to: '/shop/$part', params: { part: 'wires' } },
  machines: { to: '/shop/$part', params: { part: 'machines' } },
  recipes: { to: '/recipes' },
  bins: { to: '/shop/$part', params: { part: 'bins' } },
  spools: { to: '/wire' },
  sets: { to: '/sets' },
};

type StepKind = 'settings' | 'wire' | 'machine' | 'recipe' | 'bin' | 'spool' | 'set';

/** Whether the shop has any of a kind; undefined until it is known. */
function useHas(kind: StepKind, enabled = true): boolean | undefined {
  const items = useRecords(kind, { limit: 1 }, { enabled }).data?.items;
  return items && items.length > 0;
}
