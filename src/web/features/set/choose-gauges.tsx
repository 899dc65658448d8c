import { NativeSelect } from '@mantine/core';
import type { Shop } from '../../../core/day/index.js';
import { formatGauge } from '../../../core/units/index.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { SETS_WORDS } from '../../words/sets.js';
import type { OfferedSet } from '../request/answer-form.js';
import { faultsByField, NO_FAULTS } from '../request/form-faults.js';
import { type Aim, BLANK_FORM } from '../request/request-form.js';
import { gaugesOf } from '../request/set-words.js';
import { SuggestedInput } from '../request/suggested-input.js';
import { useFormAnswer } from '../request/use-form-answer.js';
import type { Home } from './at-home.js';
import { PlaceFields } from './stringing-fields.js';

interface ChooseGaugesProps {
  readonly shop: Shop;
  readonly material: string;
  readonly end: string;
  /** Where the set is at home, to begin with. */
  readonly home: Home | undefined;
  /** With the gauges as one would type them. */
  readonly onTake: (gauges: string) => void;
}

/** Lets the shop choose gauges for pulls that are wished: alike, graded, like another set, or as given. */
export function ChooseGauges({ shop, material, end, home, onTake }: ChooseGaugesProps) {
  const { edit: words } = useWords(SETS_WORDS);
  const requests = useWords(REQUESTS_WORDS);
  const { form, change, answer } = useFormAnswer(shop, { ...FIRST, ...home }, { material, end });
  const faults = answer.ok ? NO_FAULTS : faultsByField(answer.fault, requests);
  const isBegun = form.instrument !== '' || form.scale !== '' || form.tuning !== '';
  return (
    <details className={desk.part}>
      <summary>
        <strong>{words.choose}</strong>
      </summary>
      <p className="quiet">{words.chooseLead}</p>
      <form className={desk.fields} onSubmit={(event) => event.preventDefault()}>
        <PlaceFields shop={shop} place={form} faults={isBegun ? faults : NO_FAULTS} change={change} />
        <NativeSelect
          label={words.aim}
          value={form.aim}
          data={Object.entries(words.aims).map(([value, label]) => ({ value, label }))}
          onChange={(event) => change({ aim: event.currentTarget.value as Aim, pulls: '' })}
        />
        {form.aim === 'feel' ? (
          <SuggestedInput
            label={words.like}
            value={form.likes}
            onChange={(likes) => change({ likes })}
            suggestions={shop.sets.map(({ name }) => name)}
            fault={isBegun ? faults.likes : undefined}
          />
        ) : (
          <SuggestedInput
            label={words.pulls}
            description={form.aim === 'free' ? words.pullsHint.many : words.pullsHint.one}
            value={form.pulls}
            onChange={(pulls) => change({ pulls })}
            fault={isBegun ? (faults.wishes ?? faults.likes) : undefined}
          />
        )}
      </form>
      {answer.ok ? (
        <Takes sets={answer.value.sets} onTake={onTake} />
      ) : (
        <p className="quiet">{words.nothingToTake}</p>
      )}
    </details>
  );
}

const FIRST = { ...BLANK_FORM, aim: 'even', pulls: '70 N' } as const;

function Takes({
  sets,
  onTake,
}: {
  readonly sets: readonly OfferedSet[];
  readonly onTake: (gauges: string) => void;
}) {
  const { edit: words } = useWords(SETS_WORDS);
  const { pull } = useFigures();
  return (
    <div className={desk.row}>
      {sets.map(({ set, keys }) => (
        <Button key={keys.join()} onClick={() => onTake(asTyped(set.strings))}>
          {words.take(`${gaugesOf(set)} (${pull(set.totalTensionN)})`)}
        </Button>
      ))}
    </div>
  );
}

const asTyped = (strings: OfferedSet['set']['strings']): string =>
  strings.map(({ candidate }) => `${formatGauge(candidate.gaugeThou)} ${candidate.kind}`).join('-');
