import type { ReactNode } from 'react';
import { stringKeyInWords } from '../../contract/index.js';
import { RoomTitle } from './room-title.js';

interface StringHeadProps {
  readonly stringKey: string;
  /** Of the run or lot. */
  readonly name: string;
  /** The way back to the others. */
  readonly back: ReactNode;
}

/** Which string it is about, readable from a metre, and what run or lot of it. */
export function StringHead({ stringKey, name, back }: StringHeadProps) {
  const { short, material, finish } = stringKeyInWords(stringKey);
  return (
    <div>
      <RoomTitle title={short} />
      <p>{[material, finish].filter(Boolean).join(', ')}</p>
      <p className="quiet">
        {name} · {back}
      </p>
    </div>
  );
}
