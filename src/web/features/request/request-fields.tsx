import { NativeSelect } from '@mantine/core';
import { memo } from 'react';
import { materialInWords } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import type { StringMaterial } from '../../../core/recipes/index.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { alikeIn, type FieldsProps } from './alike-in.js';
import styles from './request-part.module.css';
import { SuggestedInput } from './suggested-input.js';

/** What the player plays, how it is tuned, and of what the strings are to be. */
export const HasFields = memo(
  function HasFields({ shop, form, faults, change }: FieldsProps) {
    const words = useWords(REQUESTS_WORDS);
    return (
      <fieldset className={styles.group}>
        <legend>{words.groups.has}</legend>
        <div className={styles.pair}>
          <SuggestedInput
            label={words.fields.instrument}
            description={words.hints.instrument}
            value={form.instrument}
            onChange={(instrument) => change({ instrument })}
            suggestions={shop.instruments.map(({ name }) => name)}
            fault={faults.instrument}
          />
          <SuggestedInput
            label={words.fields.scale}
            description={words.hints.scale}
            placeholder={words.hints.scaleEmpty}
            value={form.scale}
            onChange={(scale) => change({ scale })}
            fault={faults.scale}
          />
        </div>
        <SuggestedInput
          label={words.fields.tuning}
          description={words.hints.tuning}
          value={form.tuning}
          onChange={(tuning) => change({ tuning })}
          suggestions={shop.tunings.map(({ name }) => name)}
          fault={faults.tuning}
        />
        <div className={styles.pair}>
          <NativeSelect
            label={words.fields.material}
            value={form.material}
            data={wrapMaterials(shop).map(materialInWords)}
            onChange={(event) => change({ material: event.currentTarget.value })}
          />
          <NativeSelect
            label={words.fields.end}
            value={form.end}
            data={Object.entries(words.ends).map(([value, label]) => ({ value, label }))}
            onChange={(event) => change({ end: event.currentTarget.value })}
          />
        </div>
      </fieldset>
    );
  },
  alikeIn('instrument', 'scale', 'tuning', 'material', 'end'),
);

/** What the shop winds; before it winds anything, the usual one. */
export function wrapMaterials({ recipes }: Pick<Shop, 'recipes'>): readonly StringMaterial[] {
  const wound = [...new Set(recipes.map(({ material }) => material))].filter(
    (material) => material !== 'plain-steel',
  );
  return wound.length > 0 ? wound : ['nickel-plated-steel'];
}

/** The set that the player likes, and where. */
export const LikesFields = memo(
  function LikesFields({ shop, form, faults, change }: FieldsProps) {
    const words = useWords(REQUESTS_WORDS);
    const isShopSet = shop.sets.some(({ name }) => name === form.likes);
    return (
      <fieldset className={styles.group}>
        <legend>{words.groups.likes}</legend>
        <SuggestedInput
          label={words.fields.likes}
          description={words.hints.likes}
          value={form.likes}
          onChange={(likes) => change({ likes })}
          suggestions={shop.sets.map(({ name }) => name)}
          fault={faults.likes}
        />
        {!isShopSet && form.likes !== '' && (
          <NativeSelect
            label={words.fields.likesMaterial}
            value={form.likesMaterial}
            data={[{ value: '', label: words.sameMaterial }, ...wrapMaterials(shop).map(materialInWords)]}
            onChange={(event) => change({ likesMaterial: event.currentTarget.value })}
          />
        )}
        <div className={styles.pair}>
          <SuggestedInput
            label={words.fields.likesTuning}
            placeholder={words.hints.likesTuning}
            value={form.likesTuning}
            onChange={(likesTuning) => change({ likesTuning })}
            suggestions={shop.tunings.map(({ name }) => name)}
            fault={faults.likesTuning}
          />
          <SuggestedInput
            label={words.fields.likesScale}
            placeholder={words.hints.likesScale}
            value={form.likesScale}
            onChange={(likesScale) => change({ likesScale })}
            fault={faults.likesScale}
          />
        </div>
      </fieldset>
    );
  },
  alikeIn('likes', 'likesMaterial', 'likesTuning', 'likesScale'),
);
