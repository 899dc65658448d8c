import { NativeSelect } from '@mantine/core';
import { useState } from 'react';
import { Button, buttonClass } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { Pack } from './packing-roll.js';

const COLUMNS = 3;
const PLACES = Array.from({ length: 24 }, (_, at) => at + 1);

interface PackLabelsProps {
  readonly pack: Pack;
  /** Packs of its order. */
  readonly packs: number;
}

/** Labels to print, and to print again, from where the sheet in the printer still has some. */
export function PackLabels({ pack, packs }: PackLabelsProps) {
  const words = useWords(PACKING_WORDS);
  const [isOpen, setOpen] = useState(false);
  const [place, setPlace] = useState(1);
  const from = (path: string) => `/api/v1/${path}?place=${place}`;
  return (
    <>
      <Button size="floor" onClick={() => setOpen(true)}>
        {words.labels}
      </Button>
      <Dialog title={words.labelsTitle} open={isOpen} onClose={() => setOpen(false)}>
        <p>{words.labelsLead}</p>
        <NativeSelect
          label={words.labelPlace}
          value={place}
          onChange={(event) => setPlace(Number(event.currentTarget.value))}
          data={PLACES.map((each) => ({
            value: String(each),
            label: words.labelPlaceAt(each, Math.ceil(each / COLUMNS), ((each - 1) % COLUMNS) + 1),
          }))}
        />
        <a
          className={buttonClass('main', 'floor')}
          href={from(`packs/${pack.id}/label.pdf`)}
          target="_blank"
          rel="noreferrer"
        >
          {words.labelOfPack}
        </a>
        <a
          className={buttonClass('plain', 'floor')}
          href={from(`orders/${pack.body.orderId}/labels.pdf`)}
          target="_blank"
          rel="noreferrer"
        >
          {words.labelsOfOrder(packs)}
        </a>
      </Dialog>
    </>
  );
}
