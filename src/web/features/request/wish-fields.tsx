import { NativeSelect } from '@mantine/core';
import { memo } from 'react';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { alikeIn, type FieldsProps } from './alike-in.js';
import type { Aim, RequestForm } from './request-form.js';
import styles from './request-part.module.css';
import { SuggestedInput } from './suggested-input.js';
import { WishSlider } from './wish-slider.js';

type WishProps = Omit<FieldsProps, 'shop'>;

/** What is aimed at, by degrees where it has any. */
export function WishFields(props: WishProps) {
  const words = useWords(REQUESTS_WORDS);
  return (
    <fieldset className={`${styles.group} ${styles.wishes}`}>
      <legend>{words.groups.wishes}</legend>
      <AimFields {...props} />
      <HeavierSliders {...props} />
      <OtherWishes {...props} />
    </fieldset>
  );
}

const AimFields = memo(
  function AimFields({ form, faults, change }: WishProps) {
    const { wishes, hints } = useWords(REQUESTS_WORDS);
    return (
      <>
        <NativeSelect
          label={wishes.aim}
          value={form.aim}
          data={choicesOf(wishes.aims)}
          onChange={(event) => change({ aim: event.currentTarget.value as Aim, pulls: '' })}
        />
        {form.aim === 'graded' && (
          <WishSlider
            field="gradePercent"
            label={wishes.grade}
            words={wishes.gradeBy(form.gradePercent)}
            value={form.gradePercent}
            least={0}
            most={10}
            change={change}
          />
        )}
        {form.aim !== 'feel' && (
          <SuggestedInput
            label={form.aim === 'free' ? wishes.pulls : wishes.pull}
            description={hints.pulls[form.aim]}
            value={form.pulls}
            onChange={(pulls) => change({ pulls })}
            fault={faults.wishes}
          />
        )}
      </>
    );
  },
  alikeIn('aim', 'gradePercent', 'pulls'),
);

function HeavierSliders({ form, change }: WishProps) {
  const { wishes } = useWords(REQUESTS_WORDS);
  return (
    <>
      <WishSlider
        field="bassPercent"
        label={wishes.basses}
        words={wishes.heavier(form.bassPercent)}
        value={form.bassPercent}
        least={-20}
        most={20}
        change={change}
      />
      <WishSlider
        field="treblePercent"
        label={wishes.trebles}
        words={wishes.heavier(form.treblePercent)}
        value={form.treblePercent}
        least={-20}
        most={20}
        change={change}
      />
      <WishSlider
        field="bendPercent"
        label={wishes.bend}
        words={wishes.bendBy(form.bendPercent)}
        value={form.bendPercent}
        least={0}
        most={100}
        step={5}
        change={change}
      />
    </>
  );
}

const OtherWishes = memo(
  function OtherWishes({ form, faults, change }: WishProps) {
    const { wishes, fields, hints } = useWords(REQUESTS_WORDS);
    return (
      <>
        <NativeSelect
          label={wishes.third}
          value={form.third}
          data={choicesOf(wishes.thirds)}
          onChange={(event) => change({ third: event.currentTarget.value as RequestForm['third'] })}
        />
        <SuggestedInput
          label={fields.wishes}
          description={hints.wishes}
          value={form.more}
          onChange={(more) => change({ more })}
          fault={form.aim === 'feel' || form.more !== '' ? faults.wishes : undefined}
        />
      </>
    );
  },
  alikeIn('aim', 'third', 'more'),
);

const choicesOf = (choices: Readonly<Record<string, string>>) =>
  Object.entries(choices).map(([value, label]) => ({ value, label }));
