import { NativeSelect } from '@mantine/core';
import { AmountField } from '../../parts/amount-field.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { EMPTY_WRAP, GAP_RULE, ROLLED_RULE, type WireRecord, type WrapDraft } from './recipe-draft.js';

interface WrapFieldsProps {
  /** From the core outwards, one or two. */
  readonly wraps: readonly WrapDraft[];
  /** What may lie under another layer, and what may be seen and touched. */
  readonly inner: readonly WireRecord[];
  readonly outer: readonly WireRecord[];
  readonly onChange: (wraps: readonly WrapDraft[]) => void;
}

/** The layers of wrap of a recipe: their wire, the gap between turns, rolled or round. */
export function WrapFields({ wraps, inner, outer, onChange }: WrapFieldsProps) {
  const words = useWords(RECIPES_WORDS);
  const changeOne = (at: number, change: Partial<WrapDraft>) =>
    onChange(wraps.map((wrap, index) => (index === at ? { ...wrap, ...change } : wrap)));
  return (
    <>
      {wraps.map((wrap, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a layer is known by where it lies
        <div key={at} className={`${desk.fields} ${desk.whole}`}>
          <NativeSelect
            {...HINT_BELOW}
            label={words.wrap(at + 1, wraps.length)}
            value={wrap.wireId}
            data={[
              { value: '', label: words.choose },
              ...(at === wraps.length - 1 ? outer : inner).map(({ id, body }) => ({
                value: id,
                label: body.name,
              })),
            ]}
            onChange={(event) => changeOne(at, { wireId: event.currentTarget.value })}
          />
          <AmountField
            label={words.gap}
            rule={GAP_RULE}
            text={wrap.gapPercent}
            onText={(gapPercent) => changeOne(at, { gapPercent })}
          />
          <AmountField
            label={words.rolledTo}
            description={words.rolledHint}
            rule={ROLLED_RULE}
            text={wrap.rolledTo}
            onText={(rolledTo) => changeOne(at, { rolledTo })}
          />
        </div>
      ))}
      <div className={desk.whole}>
        {wraps.length === 1 ? (
          <Button kind="bare" onClick={() => onChange([...wraps, EMPTY_WRAP])}>
            {words.secondLayer}
          </Button>
        ) : (
          <Button kind="bare" onClick={() => onChange(wraps.slice(0, 1))}>
            {words.oneLayer}
          </Button>
        )}
      </div>
    </>
  );
}
