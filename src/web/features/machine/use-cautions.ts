import { useMemo } from 'react';
import { calendarDate } from '../../../core/foundation/index.js';
import {
  CAUTIONS_EDITION,
  type CautionsKnown,
  cautionsToRead,
  type SetUpSheet,
} from '../../../core/winding/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useMe } from '../../api/session.js';
import type { RecordOf } from '../../api/use-records.js';
import { useReading } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { useWords } from '../../words/language.js';
import { CAUTION_WORDS } from '../../words/machine.js';

type Caution = SetUpSheet['cautions'][number];

/** How the cautions of a run stand between this person and this machine. */
export interface CautionsOfRun {
  readonly sheet: SetUpSheet;
  /** What has yet to be read; undefined while the shop is being asked. */
  readonly toRead: readonly Caution[] | undefined;
  /** Whether this person acknowledged any at this machine before. */
  readonly isFirst: boolean;
  readonly acknowledge: () => void;
}

/** Asked for at the machine's door, so that it is known without a line too; never asked, everything counts as not yet read. */
export function useMyCautions(machineId: string | undefined) {
  return useReading('my-cautions', { machineId: machineId ?? '' }, { enabled: machineId !== undefined });
}

export function useCautions(
  { body: { machineId } }: RecordOf<'run'>,
  sheet: SetUpSheet | undefined,
): CautionsOfRun | undefined {
  const words = useWords(CAUTION_WORDS);
  const me = useMe().person.id;
  const today = calendarDate(useReading('now', {}).data?.today ?? '');
  const { data, isFetching, isPlaceholderData } = useMyCautions(machineId);
  const { enter, coming } = useQueued('acknowledge-cautions');
  const told = isPlaceholderData ? undefined : data;
  const known = useMemo((): CautionsKnown | undefined => {
    if (!today || (!told && isFetching)) return undefined;
    const entered = coming
      .filter(({ by, input }) => by.id === me && input.machineId === machineId)
      .map(({ input: { cautions, edition } }) => ({ cautions, edition, on: today }));
    const acknowledged = (told?.acknowledged ?? []).flatMap(({ cautions, edition, on }) => {
      const date = calendarDate(on);
      return date ? [{ cautions, edition, on: date }] : [];
    });
    const lastStart = calendarDate(told?.lastStart ?? '');
    return { acknowledged: [...acknowledged, ...entered], ...(lastStart ? { lastStart } : {}) };
  }, [told, isFetching, today, coming, me, machineId]);
  if (!sheet) return undefined;
  const { cautions, machineName } = sheet;
  return {
    sheet,
    toRead: known && today && cautionsToRead(cautions, known, today),
    isFirst: known?.acknowledged.length === 0,
    acknowledge: () =>
      void enter(
        { id: freshId(), machineId, cautions: [...cautions], edition: CAUTIONS_EDITION },
        { label: words.entered(machineName) },
      ),
  };
}
