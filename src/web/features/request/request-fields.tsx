import { NativeSelect } from '@mantine/core';
import { materialInWords } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import type { StringMaterial } from '../../../core/recipes/index.js';
import { type FieldFaults, LABELS } from './form-faults.js';
import type { Aim, RequestForm } from './request-form.js';
import styles from './request-part.module.css';
import { SuggestedInput } from './suggested-input.js';
import { WishSlider } from './wish-slider.js';

interface RequestFieldsProps {
  readonly shop: Shop;
  readonly form: RequestForm;
  readonly faults: FieldFaults;
  readonly change: (change: Partial<RequestForm>) => void;
}

/** What a player has, likes and wishes. Each field takes a known name or free text. */
export function RequestFields(props: RequestFieldsProps) {
  return (
    <form className={styles.form} onSubmit={(event) => event.preventDefault()}>
      <HasFields {...props} />
      <LikesFields {...props} />
      <WishFields {...props} />
    </form>
  );
}

function HasFields({ shop, form, faults, change }: RequestFieldsProps) {
  const materials = [...new Set(shop.recipes.map(({ material }) => material))].filter(isWrapMaterial);
  return (
    <fieldset className={styles.group}>
      <legend>The instrument</legend>
      <SuggestedInput
        label={LABELS.instrument}
        value={form.instrument}
        onChange={(instrument) => change({ instrument })}
        suggestions={shop.instruments.map(({ name }) => name)}
        fault={faults.instrument}
      />
      <SuggestedInput
        label={LABELS.scale}
        description="One, or two for a fan: 25.5-27 in"
        placeholder="as the instrument has"
        value={form.scale}
        onChange={(scale) => change({ scale })}
        fault={faults.scale}
      />
      <SuggestedInput
        label={LABELS.tuning}
        description="Notes, with or without octaves, or a name"
        value={form.tuning}
        onChange={(tuning) => change({ tuning })}
        suggestions={shop.tunings.map(({ name }) => name)}
        fault={faults.tuning}
      />
      <NativeSelect
        label={LABELS.material}
        value={form.material}
        data={materials.map(materialInWords)}
        onChange={(event) => change({ material: event.currentTarget.value })}
      />
    </fieldset>
  );
}

const isWrapMaterial = (material: StringMaterial): boolean => material !== 'plain-steel';

function LikesFields({ shop, form, faults, change }: RequestFieldsProps) {
  return (
    <fieldset className={styles.group}>
      <legend>What is liked now</legend>
      <SuggestedInput
        label={LABELS.likes}
        description="A set of the shop, or gauges: 10-13-17-26-36-46"
        value={form.likes}
        onChange={(likes) => change({ likes })}
        suggestions={shop.sets.map(({ name }) => name)}
        fault={faults.likes}
      />
      <SuggestedInput
        label={LABELS.likesTuning}
        placeholder="the usual one"
        value={form.likesTuning}
        onChange={(likesTuning) => change({ likesTuning })}
        suggestions={shop.tunings.map(({ name }) => name)}
        fault={faults.likesTuning}
      />
      <SuggestedInput
        label={LABELS.likesScale}
        placeholder="the same instrument"
        value={form.likesScale}
        onChange={(likesScale) => change({ likesScale })}
        fault={faults.likesScale}
      />
    </fieldset>
  );
}

function WishFields({ form, faults, change }: RequestFieldsProps) {
  return (
    <fieldset className={styles.group}>
      <legend>What is wished</legend>
      <NativeSelect
        label="Aim"
        value={form.aim}
        data={AIMS}
        onChange={(event) => change({ aim: event.currentTarget.value as Aim })}
      />
      {form.aim === 'graded' && (
        <WishSlider
          label="Pull grows towards the bass"
          words={`${form.gradePercent} % a string`}
          value={form.gradePercent}
          least={0}
          most={10}
          step={1}
          onChange={(gradePercent) => change({ gradePercent })}
        />
      )}
      <WishSlider
        label="Basses"
        words={heavierInWords(form.bassPercent)}
        value={form.bassPercent}
        least={-20}
        most={20}
        step={1}
        onChange={(bassPercent) => change({ bassPercent })}
      />
      <WishSlider
        label="Trebles"
        words={heavierInWords(form.treblePercent)}
        value={form.treblePercent}
        least={-20}
        most={20}
        step={1}
        onChange={(treblePercent) => change({ treblePercent })}
      />
      <WishSlider
        label="Match the bend"
        words={bendInWords(form.bendPercent)}
        value={form.bendPercent}
        least={0}
        most={100}
        step={5}
        onChange={(bendPercent) => change({ bendPercent })}
      />
      <NativeSelect
        label="Third string"
        value={form.third}
        data={THIRDS}
        onChange={(event) => change({ third: event.currentTarget.value as RequestForm['third'] })}
      />
      <SuggestedInput
        label={LABELS.wishes}
        description="Such as: string 1 = 10; even 75 N"
        value={form.more}
        onChange={(more) => change({ more })}
        fault={faults.wishes}
      />
    </fieldset>
  );
}

const AIMS = [
  { value: 'feel', label: 'Feels like the set that is liked' },
  { value: 'even', label: 'Every string pulls alike' },
  { value: 'graded', label: 'Pull grows towards the bass' },
];

const THIRDS = [
  { value: 'either', label: 'Plain or wound' },
  { value: 'plain', label: 'Plain' },
  { value: 'wound', label: 'Wound' },
];

function heavierInWords(percent: number): string {
  if (percent === 0) return 'as they are';
  return `${Math.abs(percent)} % ${percent > 0 ? 'heavier' : 'lighter'}`;
}

function bendInWords(percent: number): string {
  if (percent === 0) return 'match the pull';
  return percent === 100 ? 'match the bend alone' : `${percent} % bend, ${100 - percent} % pull`;
}
