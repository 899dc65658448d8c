import { useState } from 'react';
import type { InputNamed, OutputNamed } from '../../../contract/index.js';
import { useDo } from '../../api/use-do.js';

export type LogPreview = OutputNamed<'import-dry-room'>['preview'];
type Asked = InputNamed<'import-dry-room'>;
export type LogMapping = NonNullable<Asked['mapping']>;

/** How a logger's file is meant, as far as a person says. */
export interface LogForm {
  readonly source: string;
  readonly room: string;
  readonly text: string;
  /** `tells`: the file tells itself. */
  readonly order: 'tells' | 'day' | 'month';
  readonly clock: 'shop' | 'utc';
  readonly mapping: LogMapping | undefined;
}

export interface ImportingLog {
  readonly form: LogForm;
  readonly preview: LogPreview | undefined;
  /** Whether the preview is of the form as it stands. */
  readonly isFresh: boolean;
  readonly busy: boolean;
  readonly problem: ReturnType<typeof useDo<'import-dry-room'>>['problem'];
  readonly change: (change: Partial<LogForm>) => void;
  readonly look: (change?: Partial<LogForm>) => Promise<void>;
  /** Gives how many readings were written; undefined where it was refused. */
  readonly takeIn: () => Promise<number | undefined>;
}

/** The file of a logger on its way in: looked at as often as one likes, then all of it or nothing. */
export function useImportLog(usual: Pick<LogForm, 'source' | 'room'>): ImportingLog {
  const [form, setForm] = useState<LogForm>({
    ...usual,
    text: '',
    order: 'tells',
    clock: 'shop',
    mapping: undefined,
  });
  const [seen, setSeen] = useState<{ readonly of: LogForm; readonly preview: LogPreview }>();
  const { run, busy, problem } = useDo('import-dry-room');
  return {
    form,
    preview: seen?.preview,
    isFresh: seen?.of === form,
    busy,
    problem,
    change: (change) => setForm((before) => ({ ...before, ...change })),
    look: async (change = {}) => {
      const wanted = { ...form, ...change };
      setForm(wanted);
      const done = await run(askedOf(wanted, usual, false));
      setSeen(done.ok ? { of: wanted, preview: done.value.preview } : undefined);
    },
    takeIn: async () => {
      const done = await run(askedOf(form, usual, true));
      return done.ok ? done.value.preview.fresh : undefined;
    },
  };
}

function askedOf(form: LogForm, usual: Pick<LogForm, 'source' | 'room'>, commit: boolean): Asked {
  const room = form.room.trim();
  return {
    source: form.source.trim() || usual.source,
    csv: form.text,
    clock: form.clock,
    commit,
    ...(room === '' ? {} : { room }),
    ...(form.order === 'tells' ? {} : { dayFirst: form.order === 'day' }),
    ...(form.mapping ? { mapping: form.mapping } : {}),
  };
}
