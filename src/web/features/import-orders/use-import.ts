import { useRef, useState } from 'react';
import { useDo } from '../../api/use-do.js';
import type { Mapping, Preview } from './mapping.js';

/** A file of orders on its way in. */
export interface Importing {
  readonly source: string;
  readonly text: string;
  readonly preview: Preview | undefined;
  /** What its headings mean: as a person last said, else as the shop took them. */
  readonly mapping: Mapping;
  /** Whether the preview is of the text and source as they stand. */
  readonly isFresh: boolean;
  readonly busy: boolean;
  readonly problem: ReturnType<typeof useDo<'import-orders'>>['problem'];
  readonly setSource: (source: string) => void;
  readonly setText: (text: string) => void;
  /** Looks again, with what a person says of the headings; else by what is remembered of the source, else by their names. */
  readonly look: (mapping?: Mapping, text?: string) => Promise<void>;
  /** Takes all of it in. Gives whether it was done. */
  readonly takeIn: () => Promise<boolean>;
}

export function useImport(usualSource: string): Importing {
  const [source, setSource] = useState(usualSource);
  const [text, setText] = useState('');
  const [told, setTold] = useState<Mapping>();
  const [seen, setSeen] = useState<{ readonly of: string; readonly preview: Preview }>();
  const looks = useRef(0);
  const { run, busy, problem, forget } = useDo('import-orders');
  const named = source.trim() === '' ? usualSource : source.trim();
  const mapped = (mapping: Mapping | undefined) => (mapping ? { mapping } : {});
  return {
    source,
    text,
    preview: seen?.preview,
    mapping: told ?? seen?.preview.columns ?? {},
    isFresh: seen?.of === `${named}\n${text}`,
    busy,
    problem,
    setSource: (next) => {
      // Another source has headings of its own.
      setTold(undefined);
      setSource(next);
    },
    setText,
    look: async (mapping = told, csv = text) => {
      setTold(mapping);
      looks.current += 1;
      const look = looks.current;
      const done = await run({ source: named, csv, commit: false, ...mapped(mapping) });
      // An answer that another question has overtaken says nothing any more.
      if (look !== looks.current) return;
      if (!done.ok) return setSeen(undefined);
      return setSeen({ of: `${named}\n${csv}`, preview: done.value.preview });
    },
    takeIn: async () => {
      const mapping = told ?? seen?.preview.columns;
      const done = await run({ source: named, csv: text, commit: true, ...mapped(mapping) });
      if (!done.ok) return false;
      forget();
      return true;
    },
  };
}
