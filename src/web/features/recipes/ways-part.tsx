import { Checkbox, SegmentedControl } from '@mantine/core';
import { useState } from 'react';
import { materialInWords, recipeFaultWords } from '../../../contract/index.js';
import type { RecipeChoices } from '../../../core/recipes/index.js';
import type { SeatModel } from '../../../core/string/index.js';
import { metresFromThou } from '../../../core/units/index.js';
import { AmountField } from '../../parts/amount-field.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import type { RecipeDraft, WireRecord } from './recipe-draft.js';
import { type ChosenSounding, noteInWords } from './use-sounding.js';
import { useWays } from './use-ways.js';
import { WaysLinked } from './ways-linked.js';

interface WaysPartProps {
  readonly draft: RecipeDraft;
  readonly wires: readonly WireRecord[];
  readonly seat: SeatModel | undefined;
  readonly sounding: ChosenSounding;
  /** Left out for those who may not change the recipe. */
  readonly onTake?: (change: Partial<RecipeDraft>) => void;
}

const TOLERANCE: AmountRule = {
  units: { thou: metresFromThou(1), mm: 0.001, in: 0.0254 },
  bare: 'thou',
  least: 0,
  most: metresFromThou(10),
};

type Layers = 'usual' | 'one' | 'two';
const MOST_LAYERS: Readonly<Record<Layers, 1 | 2 | undefined>> = { usual: undefined, one: 1, two: 2 };

/** Every core with every wrap that makes the gauge, as a picture of what is traded for what and as a table. */
export function WaysPart({ draft, wires, seat, sounding, onTake }: WaysPartProps) {
  const words = useWords(RECIPES_WORDS);
  const [tolerance, setTolerance] = useState('0.5');
  const [layers, setLayers] = useState<Layers>('usual');
  const [onlyAhead, setOnlyAhead] = useState(false);
  const read = readAmount(tolerance, TOLERANCE);
  const wish = {
    gauge: draft.gauge,
    material: draft.material,
    toleranceM: read.ok ? read.value : undefined,
    maxLayers: MOST_LAYERS[layers],
  };
  const ways = useWays(wish, wires, { seat, sounding: sounding.sounding });
  return (
    <section className={desk.part} aria-labelledby="ways">
      <h2 id="ways">{words.ways}</h2>
      <p className="quiet">
        {draft.material === 'plain-steel'
          ? words.waysPlain(draft.gauge || '…')
          : words.waysLead(draft.gauge || '…', materialInWords(draft.material))}
      </p>
      <div className={desk.narrow}>
        <AmountField
          label={words.tolerance}
          description={words.toleranceHint}
          rule={TOLERANCE}
          text={tolerance}
          onText={setTolerance}
        />
        {draft.material !== 'plain-steel' && (
          <div className={desk.loose}>
            <p className={desk.label}>{words.layers}</p>
            <SegmentedControl
              aria-label={words.layers}
              value={layers}
              data={(['usual', 'one', 'two'] as const).map((value) => ({
                value,
                label: words.layerChoices[value],
              }))}
              onChange={(wanted) => setLayers(wanted as Layers)}
            />
          </div>
        )}
        <Checkbox
          label={words.onlyAhead}
          className={desk.loose}
          checked={onlyAhead}
          onChange={(event) => setOnlyAhead(event.currentTarget.checked)}
        />
      </div>
      {!ways && <p>{words.waysNeed}</p>}
      {ways && !ways.ok && <NoWay fault={ways.fault} />}
      {ways?.ok && (
        <Found
          ways={ways.value}
          onlyAhead={onlyAhead}
          draft={draft}
          wires={wires}
          seat={seat}
          sounding={sounding}
          {...(onTake ? { onTake } : {})}
        />
      )}
    </section>
  );
}

function NoWay({ fault }: { readonly fault: Parameters<typeof recipeFaultWords>[0] }) {
  const { what, mend } = recipeFaultWords(fault);
  return (
    <div role="status">
      <p className="care">{what}</p>
      <p>{mend}</p>
    </div>
  );
}

interface FoundProps extends WaysPartProps {
  readonly ways: RecipeChoices;
  readonly onlyAhead: boolean;
}

function Found({ ways, onlyAhead, draft, wires, seat, sounding, onTake }: FoundProps) {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const nameOf = new Map(wires.map(({ id, body }) => [id, body.name]));
  const idOf = new Map(wires.map(({ id, body }) => [body.name, id]));
  const { considered, withinTolerance, front, beaten } = ways;
  const now = [draft.coreWireId, ...draft.wraps.map(({ wireId }) => wireId)]
    .map((id) => nameOf.get(id) ?? '')
    .join(' + ');
  return (
    <>
      <p className="quiet">
        {words.waysCounted(considered, withinTolerance, front.length)}{' '}
        {sounding.sounding
          ? words.referenceAt(
              noteInWords(sounding.sounding.pitch),
              figures.length(sounding.sounding.speakingLengthM),
            )
          : words.reference}
      </p>
      <WaysLinked
        front={front}
        beaten={onlyAhead ? [] : beaten}
        now={now}
        seat={seat}
        {...(onTake
          ? {
              onTake: ({ coreWireId, wrapWireIds }) => {
                onTake({
                  coreWireId: idOf.get(coreWireId) ?? '',
                  wraps: wrapWireIds.map((name) => ({
                    wireId: idOf.get(name) ?? '',
                    gapPercent: '0',
                    rolledTo: '',
                  })),
                });
                tell({ text: words.taken([coreWireId, ...wrapWireIds].join(' + ')) });
              },
            }
          : {})}
      />
    </>
  );
}
