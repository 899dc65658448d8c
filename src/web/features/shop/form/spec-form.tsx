import { Checkbox, NativeSelect, Textarea, TextInput } from '@mantine/core';
import { AmountField } from '../../../parts/amount-field.js';
import desk from '../../../parts/desk.module.css';
import { HINT_BELOW } from '../../../parts/hint-below.js';
import { useWords } from '../../../words/language.js';
import { SHOP_WORDS } from '../../../words/shop.js';
import { type FieldSpec, type FormDraft, YES } from './form-spec.js';
import styles from './spec-form.module.css';

interface SpecFormProps {
  readonly specs: readonly FieldSpec[];
  readonly draft: FormDraft;
  readonly onChange: (change: FormDraft) => void;
}

/** The fields of a record, group by group. */
export function SpecForm({ specs, draft, onChange }: SpecFormProps) {
  const groups = [...new Set(specs.map(({ group }) => group))];
  return groups.map((group) => (
    <fieldset key={group} className={styles.group}>
      <legend>{group}</legend>
      <div className={desk.fields}>
        {specs
          .filter((spec) => spec.group === group)
          .map((spec) => (
            <Field
              key={spec.path}
              spec={spec}
              text={draft[spec.path] ?? ''}
              onText={(text) => onChange({ [spec.path]: text })}
            />
          ))}
      </div>
    </fieldset>
  ));
}

interface FieldProps {
  readonly spec: FieldSpec;
  readonly text: string;
  readonly onText: (text: string) => void;
}

function Field({ spec: { label, hint, kind }, text, onText }: FieldProps) {
  const { edit } = useWords(SHOP_WORDS);
  const about = { label, ...(hint === undefined ? {} : { description: hint }) };
  switch (kind.type) {
    case 'amount':
      return <AmountField {...about} rule={kind.rule} text={text} onText={onText} />;
    case 'choice':
      return (
        <NativeSelect
          {...HINT_BELOW}
          {...about}
          value={text}
          data={[
            ...(kind.optional || !kind.options.some(({ value }) => value === text)
              ? [{ value: '', label: kind.optional ? edit.notSaid : edit.choose }]
              : []),
            ...kind.options,
          ]}
          onChange={(event) => onText(event.currentTarget.value)}
        />
      );
    case 'flag':
      return (
        <Checkbox
          {...about}
          checked={text === YES}
          onChange={(event) => onText(event.currentTarget.checked ? YES : '')}
        />
      );
    case 'several':
      return <Several {...about} options={kind.options} text={text} onText={onText} />;
    case 'list':
      return (
        <Textarea
          {...HINT_BELOW}
          {...about}
          rows={6}
          value={text}
          spellCheck={false}
          className={desk.whole}
          onChange={(event) => onText(event.currentTarget.value)}
        />
      );
    default:
      return (
        <TextInput
          {...HINT_BELOW}
          {...about}
          value={text}
          onChange={(event) => onText(event.currentTarget.value)}
        />
      );
  }
}

interface SeveralProps {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly text: string;
  readonly onText: (text: string) => void;
}

function Several({ label, options, text, onText }: SeveralProps) {
  const chosen = text.split(' ').filter((value) => value !== '');
  return (
    <fieldset className={`${desk.bare} ${desk.whole}`}>
      <legend className={desk.label}>{label}</legend>
      <div className={desk.row}>
        {options.map((option) => (
          <Checkbox
            key={option.value}
            label={option.label}
            checked={chosen.includes(option.value)}
            onChange={(event) =>
              onText(
                (event.currentTarget.checked
                  ? [...chosen, option.value]
                  : chosen.filter((value) => value !== option.value)
                )
                  .toSorted()
                  .join(' '),
              )
            }
          />
        ))}
      </div>
    </fieldset>
  );
}
