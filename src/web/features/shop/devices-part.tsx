import { TextInput } from '@mantine/core';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import type { Static } from 'typebox';
import type { ACCESS_SCHEMAS, ProblemDetails } from '../../../contract/index.js';
import { askJson } from '../../api/ask-json.js';
import { Refused } from '../../api/client.js';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import { Asked } from '../../parts/asked.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { EndDialog } from './end-dialog.js';

type Devices = Static<typeof ACCESS_SCHEMAS.devices>;
type Device = Devices['items'][number];
type Enrolled = Static<typeof ACCESS_SCHEMAS.enrolled>;
type Who = Static<typeof ACCESS_SCHEMAS.who>;

/** The tablets and computers on which a PIN is enough. */
export function DevicesPart() {
  const words = useWords(SHOP_WORDS);
  const figures = useFigures();
  const revoke = useDo('revoke-device');
  const [ending, setEnding] = useState<Device>();
  const devices = useQuery({ queryKey: ['devices'], queryFn: () => askJson<Devices>('/devices') });
  const here = useQuery({ queryKey: ['devices', 'here'], queryFn: () => askJson<Who>('/who') });
  const { devices: said } = words;
  const hereId = here.data?.device?.device.id;
  const columns: readonly SheetColumn<Device>[] = [
    {
      heading: said.columns.name,
      names: true,
      cell: ({ id, name }) => (id === hereId ? `${name} (${said.thisOne})` : name),
    },
    { heading: said.columns.since, whole: true, cell: ({ enrolledAt }) => figures.moment(enrolledAt) },
    {
      heading: said.columns.state,
      cell: ({ revokedAt }) => (
        <StateMark tone={revokedAt === null ? 'done' : 'stopped'}>
          {revokedAt === null ? said.open : said.ended}
        </StateMark>
      ),
    },
    {
      heading: words.actions,
      cell: (device) =>
        device.revokedAt === null && <Button onClick={() => setEnding(device)}>{said.revoke}</Button>,
    },
  ];
  return (
    <div className={desk.stack}>
      <EnrolForm />
      <Asked question={devices} what={words.parts.devices}>
        {({ items }) =>
          items.length === 0 ? (
            <p className="quiet">{said.none}</p>
          ) : (
            <SheetTable
              caption={words.parts.devices}
              columns={columns}
              rows={items}
              rowKey={({ id }) => id}
              middle
            />
          )
        }
      </Asked>
      {ending && (
        <EndDialog
          id={ending.id}
          title={said.revokeTitle(ending.name)}
          lead={said.revokeLead}
          action={said.revoke}
          done={said.revoked(ending.name)}
          doing={revoke}
          onClose={() => setEnding(undefined)}
        />
      )}
    </div>
  );
}

/** Enrols the device that the page is looked at on: the server gives it a cookie, which no use case could. */
function EnrolForm() {
  const { devices: words } = useWords(SHOP_WORDS);
  const queries = useQueryClient();
  const tell = useTell();
  const [id, setId] = useState(freshId);
  const [name, setName] = useState('');
  const [problem, setProblem] = useState<ProblemDetails>();
  const enrol = (event: FormEvent) => {
    event.preventDefault();
    const wanted = name.trim();
    if (wanted === '') return;
    askJson<Enrolled>('/devices/enrol', { method: 'POST', body: { id, name: wanted } })
      .then(async () => {
        setProblem(undefined);
        setName('');
        setId(freshId());
        tell({ text: words.enrolled(wanted) });
        await queries.invalidateQueries({ queryKey: ['devices'] });
      })
      .catch((thrown: unknown) => {
        if (!(thrown instanceof Refused)) throw thrown;
        setProblem(thrown.problem);
      });
  };
  return (
    <form onSubmit={enrol} className={desk.stack}>
      <p>{words.enrolLead}</p>
      <div className={desk.narrow}>
        <TextInput label={words.name} value={name} onChange={(event) => setName(event.currentTarget.value)} />
        <div className={desk.loose}>
          <Button type="submit" kind="main" disabled={name.trim() === ''}>
            {words.enrol}
          </Button>
        </div>
      </div>
      <ProblemBox problem={problem} />
    </form>
  );
}
