import { NativeSelect } from '@mantine/core';
import { useState } from 'react';
import desk from './desk.module.css';
import { type FieldWords, fieldsApart } from './fields-apart.js';
import { VersionsApart } from './versions-apart.js';

interface CompareVersionsProps {
  /** How many there are; they count from 1. */
  readonly count: number;
  readonly words: {
    readonly compare: string;
    readonly with: string;
    readonly caption: (one: number, other: number) => string;
    readonly version: (version: number) => string;
  };
  /** What a version holds, field by field. */
  readonly fieldsOf: (version: number) => readonly FieldWords[];
}

/** Any two versions of a record side by side; at first the last and the one before it. */
export function CompareVersions({ count, words, fieldsOf }: CompareVersionsProps) {
  const [pair, setPair] = useState<readonly [number, number]>([count - 1, count]);
  const choices = Array.from({ length: count }, (_, at) => ({
    value: String(at + 1),
    label: words.version(at + 1),
  }));
  return (
    <div className={desk.stack}>
      <div className={desk.narrow}>
        <NativeSelect
          label={words.compare}
          data={choices}
          value={String(pair[0])}
          onChange={(event) => setPair([Number(event.currentTarget.value), pair[1]])}
        />
        <NativeSelect
          label={words.with}
          data={choices}
          value={String(pair[1])}
          onChange={(event) => setPair([pair[0], Number(event.currentTarget.value)])}
        />
      </div>
      <VersionsApart
        caption={words.caption(pair[0], pair[1])}
        headings={[words.version(pair[0]), words.version(pair[1])]}
        fields={fieldsApart(fieldsOf(pair[0]), fieldsOf(pair[1]))}
      />
    </div>
  );
}
