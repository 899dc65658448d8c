import { useHotkeys } from '@mantine/hooks';
import { Link } from '@tanstack/react-router';
import { useDeferredValue, useId, useRef, useState } from 'react';
import type { ReadingAnswer } from '../../contract/index.js';
import { useReading } from '../api/use-records.js';
import { FRAME_WORDS } from '../words/frame.js';
import { useWords } from '../words/language.js';
import { placeOf } from './place-of.js';
import styles from './search-box.module.css';

type Hit = ReadingAnswer<'search'>['hits'][number];

/** Finds an order, a set, a recipe, a lot, a spool, a player from wherever one is. `/` takes one there; arrows go through what is found. */
export function SearchBox() {
  const words = useWords(FRAME_WORDS);
  const [text, setText] = useState('');
  const [open, setOpen] = useState(false);
  const [at, setAt] = useState(0);
  const asked = useDeferredValue(text.trim());
  const found = useReading('search', { text: asked || ' ' }, { enabled: asked !== '' && open });
  const hits = asked === '' ? [] : (found.data?.hits ?? []);
  const field = useRef<HTMLInputElement>(null);
  const links = useRef<(HTMLAnchorElement | null)[]>([]);
  const list = useId();
  useHotkeys([['/', () => field.current?.focus()]]);
  const close = () => {
    setOpen(false);
    setText('');
    setAt(0);
  };
  const isShown = open && asked !== '';
  return (
    <search
      className={styles.search}
      onBlur={({ currentTarget, relatedTarget }) => {
        if (!currentTarget.contains(relatedTarget)) setOpen(false);
      }}
    >
      <input
        ref={field}
        type="search"
        role="combobox"
        aria-label={words.search}
        aria-expanded={isShown}
        aria-controls={list}
        aria-activedescendant={isShown && hits[at] ? `${list}-${at}` : undefined}
        aria-autocomplete="list"
        placeholder={words.searchHint}
        title={words.searchKey}
        className={styles.field}
        value={text}
        onFocus={() => setOpen(true)}
        onChange={(event) => {
          setText(event.currentTarget.value);
          setAt(0);
          setOpen(true);
        }}
        onKeyDown={(event) => {
          const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
          if (step !== undefined && hits.length > 0) {
            event.preventDefault();
            setAt((before) => (before + step + hits.length) % hits.length);
          }
          if (event.key === 'Enter') links.current[at]?.click();
          if (event.key === 'Escape') close();
        }}
      />
      {isShown && (
        <div className={styles.found}>
          <div id={list} role="listbox" aria-label={words.search}>
            {hits.map((hit, index) => (
              <FoundLine
                key={`${hit.kind}${hit.id}`}
                hit={hit}
                id={`${list}-${index}`}
                isChosen={index === at}
                hold={(link) => {
                  links.current[index] = link;
                }}
                onGo={close}
              />
            ))}
          </div>
          {found.isSuccess && hits.length === 0 && (
            <p className={styles.none}>{words.searchNothing(asked)}</p>
          )}
        </div>
      )}
    </search>
  );
}

interface FoundLineProps {
  readonly hit: Hit;
  readonly id: string;
  readonly isChosen: boolean;
  readonly hold: (link: HTMLAnchorElement | null) => void;
  readonly onGo: () => void;
}

function FoundLine({ hit, id, isChosen, hold, onGo }: FoundLineProps) {
  const words = useWords(FRAME_WORDS);
  return (
    <Link
      {...placeOf(hit)}
      ref={hold}
      id={id}
      role="option"
      aria-selected={isChosen}
      tabIndex={-1}
      className={styles.line}
      onClick={onGo}
    >
      <span className={styles.kind}>{words.kinds[hit.kind] ?? hit.kind}</span>
      <span>
        <strong>{hit.name}</strong> <span className="quiet">{hit.about}</span>
      </span>
    </Link>
  );
}
