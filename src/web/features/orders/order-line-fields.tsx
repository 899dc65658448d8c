import { NativeSelect, TextInput } from '@mantine/core';
import { materialInWords } from '../../../contract/index.js';
import { useShop } from '../../api/use-shop.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import type { End, LineFaults, LineForm, Material } from './order-form.js';

interface OrderLineFieldsProps {
  readonly line: LineForm;
  readonly number: number;
  readonly faults: LineFaults | undefined;
  readonly change: (part: Partial<LineForm>) => void;
  readonly onTakeOut: (() => void) | undefined;
}

/** One line of an order: a set of the shop, or a set by its gauges, and how many. */
export function OrderLineFields({ line, number, faults, change, onTakeOut }: OrderLineFieldsProps) {
  const words = useWords(ORDERS_WORDS);
  return (
    <fieldset className={desk.bare}>
      <legend className={desk.label}>{words.line(number)}</legend>
      <div className={desk.fields}>
        <NativeSelect
          label={words.kind}
          value={line.kind}
          data={(['stock', 'custom'] as const).map((value) => ({ value, label: words.kindChoice[value] }))}
          onChange={({ currentTarget: { value } }) => change({ kind: value as LineForm['kind'] })}
        />
        {line.kind === 'stock' ? (
          <StockSet line={line} faults={faults} change={change} />
        ) : (
          <CustomSet line={line} faults={faults} change={change} />
        )}
        <TextInput
          label={words.quantity}
          inputMode="numeric"
          value={line.quantity}
          error={faults?.quantity && words.faults.quantity}
          onChange={({ currentTarget: { value: quantity } }) => change({ quantity })}
        />
      </div>
      {line.wasRequest && line.kind === 'custom' && <p className="quiet">{words.wasRequest}</p>}
      {onTakeOut && (
        <Button kind="bare" onClick={onTakeOut}>
          {words.takeLine(number)}
        </Button>
      )}
    </fieldset>
  );
}

type SetProps = Pick<OrderLineFieldsProps, 'line' | 'faults' | 'change'>;

function StockSet({ line, faults, change }: SetProps) {
  const words = useWords(ORDERS_WORDS);
  const sets = useShop().data?.sets ?? [];
  // One that is no longer a set of the shop still shows as what is ordered.
  const names = [...new Set([line.setName, ...sets.map(({ name }) => name)])].filter((name) => name !== '');
  return (
    <NativeSelect
      label={words.set}
      value={line.setName}
      data={[{ value: '', label: words.chooseSet }, ...names.map((value) => ({ value, label: value }))]}
      error={faults?.set && words.faults.set}
      onChange={({ currentTarget: { value: setName } }) => change({ setName })}
    />
  );
}

function CustomSet({ line, faults, change }: SetProps) {
  const words = useWords(ORDERS_WORDS);
  const recipes = useShop().data?.recipes ?? [];
  const materials = [...new Set([line.material, ...recipes.map(({ material }) => material)])];
  return (
    <>
      <TextInput
        {...HINT_BELOW}
        label={words.gauges}
        description={words.gaugesHint}
        value={line.gauges}
        error={faults?.gauges !== undefined && words.faults.gauges(faults.gauges)}
        onChange={({ currentTarget: { value: gauges } }) => change({ gauges })}
      />
      <NativeSelect
        label={words.material}
        value={line.material}
        data={materials.map((value) => ({ value, label: materialInWords(value) }))}
        onChange={({ currentTarget: { value } }) => change({ material: value as Material })}
      />
      <NativeSelect
        label={words.end}
        value={line.end}
        data={(['ball', 'loop'] as const).map((value) => ({ value, label: words.ends[value] }))}
        onChange={({ currentTarget: { value } }) => change({ end: value as End })}
      />
    </>
  );
}
