import { NativeSelect } from '@mantine/core';
import { type EndSheet, endsByCertificate } from '../../../core/winding/index.js';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { useRemembered } from '../machine/my-machine.js';

/** The spool that pieces are cut from, and the sheet by its certificate where it has one. */
interface CutFromSpool {
  readonly ends: EndSheet;
  readonly spoolId: string | undefined;
  readonly spools: readonly RecordOf<'spool'>[];
  readonly choose: (spoolId: string) => void;
}

/** Of a plain string's run the spool that lies on the bench; of cores the one that the person names. */
export function useCutFrom(run: RecordOf<'run'>, ends: EndSheet, wireId: string): CutFromSpool {
  const all = useAllRecords('spool').data ?? [];
  const [chosen, choose] = useRemembered(`cores ${run.id}`, '');
  const wanted = ends.of === 'plain-string' ? run.body.spoolIds[0] : chosen;
  const spools = all.filter(({ body, state }) => body.wireId === wireId && state !== 'empty');
  const spool = spools.find(({ id }) => id === wanted);
  const strengthPa = spool?.body.certificate?.tensilePa;
  return {
    ends: strengthPa === undefined ? ends : endsByCertificate(ends, strengthPa),
    spoolId: spool?.id,
    spools,
    choose,
  };
}

export function CutFrom({ from: { spoolId, spools, choose } }: { readonly from: CutFromSpool }) {
  const words = useWords(ENDS_WORDS);
  return (
    <NativeSelect
      {...HINT_BELOW}
      label={words.cutFrom}
      description={words.cutFromHint}
      value={spoolId ?? ''}
      data={[
        { value: '', label: words.cutFromUnknown },
        ...spools.map(({ id, body }) => ({ value: id, label: `${body.name}, ${body.lot}` })),
      ]}
      onChange={(event) => choose(event.currentTarget.value)}
    />
  );
}
