import { NativeSelect, TextInput } from '@mantine/core';
import { useState } from 'react';
import { complaintFaultInWords, wholeStringInWords } from '../../../contract/index.js';
import { COMPLAINT_FAULTS, type ComplaintFault } from '../../../core/stock/index.js';
import { useRecord } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';
import { FindPack } from './find-pack.js';

/** What a complaint is about, as far as somebody knows; nothing is empty text, so that a draft can be kept. */
export interface About {
  readonly fault: ComplaintFault | '';
  readonly packId: string;
  readonly lotId: string;
  readonly position: string;
}

export const NOTHING_KNOWN: About = { fault: '', packId: '', lotId: '', position: '' };

/** As it is sent: what is not known is left out. */
export const aboutAsSent = ({ fault, packId, lotId, position }: About, orElse: ComplaintFault) => ({
  faultCode: fault === '' ? orElse : fault,
  ...(packId === '' ? {} : { packId }),
  ...(lotId === '' || position !== '' ? {} : { lotId }),
  ...(position === '' || packId === '' ? {} : { position: Number(position) }),
});

interface AboutFieldsProps {
  readonly about: About;
  readonly change: (change: Partial<About>) => void;
}

/** The fault from the list, the pack or lot found by what stands on it, and which string of the pack. */
export function AboutFields({ about, change }: AboutFieldsProps) {
  const { form: words } = useWords(COMPLAINTS_WORDS);
  const [text, setText] = useState('');
  const isKnown = about.packId !== '' || about.lotId !== '';
  return (
    <div className={desk.stack}>
      <div className={desk.narrowField}>
        <NativeSelect
          label={words.fault}
          value={about.fault}
          data={[
            { value: '', label: words.choose },
            ...COMPLAINT_FAULTS.map((value) => ({ value, label: complaintFaultInWords(value) })),
          ]}
          onChange={(event) => change({ fault: event.currentTarget.value as About['fault'] })}
        />
      </div>
      {isKnown ? (
        <Chosen about={about} change={change} />
      ) : (
        <>
          <p className="quiet">{words.without}</p>
          <div className={desk.narrowField}>
            <TextInput
              {...HINT_BELOW}
              type="search"
              label={words.find}
              description={words.findHint}
              value={text}
              autoComplete="off"
              onChange={(event) => setText(event.currentTarget.value)}
            />
          </div>
          <FindPack
            text={text}
            onPack={(packId) => change({ packId })}
            onLot={(lotId) => change({ lotId })}
          />
        </>
      )}
    </div>
  );
}

function Chosen({ about: { packId, lotId, position }, change }: AboutFieldsProps) {
  const { form: words } = useWords(COMPLAINTS_WORDS);
  const pack = useRecord('pack', packId, { enabled: packId !== '' }).data?.body;
  const lot = useRecord('string-lot', lotId, { enabled: packId === '' && lotId !== '' }).data?.body;
  return (
    <>
      <div className={desk.row}>
        {pack && <p>{words.chosenPack(pack.labelCode, pack.setName)}</p>}
        {lot && <p>{words.chosenLot(lot.name)}</p>}
        <Button onClick={() => change({ packId: '', lotId: '', position: '' })}>{words.leave}</Button>
      </div>
      {pack && (
        <div className={desk.narrowField}>
          <NativeSelect
            label={words.which}
            value={position}
            data={[
              { value: '', label: words.notKnown },
              ...pack.picked.map((picked) => ({
                value: String(picked.position),
                label: words.position(picked.position, wholeStringInWords(picked.stringKey)),
              })),
            ]}
            onChange={(event) => change({ position: event.currentTarget.value, lotId: '' })}
          />
        </div>
      )}
    </>
  );
}
