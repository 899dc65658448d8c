import { CHANGE_KINDS, type Machine } from '../../../core/winding/index.js';
import { useShop } from '../../api/use-shop.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SET_UPS_WORDS } from '../../words/set-ups.js';

/** What a plan's set-ups lean on: for each machine the kinds of change whose figures the shop has learned, and by how much they differ
 * from its record. Empty where all goes by the record. */
export function useLearnedInputs(
  machineIds: ReadonlySet<string>,
): Readonly<Record<'scrap' | 'minutes', readonly { readonly name: string; readonly value: string }[]>> {
  const words = useWords(SET_UPS_WORDS);
  const figures = useFigures();
  const machines = (useShop().data?.machines ?? []).filter(({ id }) => machineIds.has(id));
  const inputs = (of: 'scrapTimes' | 'minutesTimes') =>
    machines.flatMap(({ name, changeLearned }: Machine) =>
      CHANGE_KINDS.flatMap((kind) => {
        const learned = changeLearned?.[kind];
        const times = learned?.[of];
        if (!learned || times === undefined) return [];
        return {
          name: words.learnedName(words.kinds[kind], name),
          value: words.learnedValue(figures.number(learned.setUps), figures.number(times, 2)),
        };
      }),
    );
  return { scrap: inputs('scrapTimes'), minutes: inputs('minutesTimes') };
}
