import { NativeSelect, Textarea, TextInput } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { CLIMATE_COLUMNS, type ClimateColumn, workshopFaultWords } from '../../../contract/index.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { RoomTitle } from '../../parts/room-title.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';
import { FileChoice } from '../import-orders/file-choice.js';
import importing from '../import-orders/import-orders.module.css';
import { type ImportingLog, type LogPreview, useImportLog } from './use-import-log.js';

/** The file of a climate logger: its text, what its headings mean, what would be taken, and then all of it or nothing. */
export function ImportLog() {
  const { log: words, firstRoom } = useWords(DRY_ROOM_WORDS);
  const log = useImportLog({ source: words.usualSource, room: firstRoom });
  return (
    <div className={desk.room}>
      <div>
        <RoomTitle title={words.title} />
        <p className={desk.lead}>{words.lead}</p>
      </div>
      <LogFields log={log} />
      {log.problem?.code !== 'dry-room.log-has-faults' && <ProblemBox problem={log.problem} />}
      {log.preview && (
        <>
          <HeadingsPart log={log} preview={log.preview} />
          <FaultsPart preview={log.preview} />
          <TakenPart log={log} preview={log.preview} />
        </>
      )}
    </div>
  );
}

function LogFields({ log: { form, change, look, busy, preview, isFresh } }: { readonly log: ImportingLog }) {
  const { log: words, room, roomHint } = useWords(DRY_ROOM_WORDS);
  return (
    <section aria-label={words.file} className={desk.stack}>
      <div className={desk.fields}>
        <TextInput
          {...HINT_BELOW}
          label={words.source}
          description={words.sourceHint}
          value={form.source}
          onChange={(event) => change({ source: event.currentTarget.value, mapping: undefined })}
        />
        <TextInput
          {...HINT_BELOW}
          label={room}
          description={roomHint}
          value={form.room}
          onChange={(event) => change({ room: event.currentTarget.value })}
        />
        <NativeSelect
          label={words.order}
          value={form.order}
          data={(['tells', 'day', 'month'] as const).map((value) => ({ value, label: words.orders[value] }))}
          onChange={(event) => change({ order: event.currentTarget.value as typeof form.order })}
        />
        <NativeSelect
          label={words.clock}
          value={form.clock}
          data={(['shop', 'utc'] as const).map((value) => ({ value, label: words.clocks[value] }))}
          onChange={(event) => change({ clock: event.currentTarget.value as typeof form.clock })}
        />
        <FileChoice onText={(text) => void look({ text })} />
      </div>
      <Textarea
        label={words.text}
        size="md"
        autosize
        minRows={4}
        maxRows={10}
        spellCheck={false}
        classNames={{ input: importing.text ?? '' }}
        value={form.text}
        onChange={(event) => change({ text: event.currentTarget.value })}
      />
      <div className={desk.row}>
        <Button
          kind={preview && isFresh ? 'plain' : 'main'}
          busy={busy}
          disabled={form.text.trim() === ''}
          onClick={() => void look()}
        >
          {words.look}
        </Button>
        {preview && !isFresh && <p className="care">{words.changedSince}</p>}
      </div>
    </section>
  );
}

interface PreviewProps {
  readonly log: ImportingLog;
  readonly preview: LogPreview;
}

/** What each heading is taken for; a person knows better. */
function HeadingsPart({ log, preview }: PreviewProps) {
  const { log: words } = useWords(DRY_ROOM_WORDS);
  const meaningOf = (heading: string): ClimateColumn | '' =>
    CLIMATE_COLUMNS.find((column) => preview.columns[column] === heading) ?? '';
  const mean = (heading: string, column: ClimateColumn | '') => {
    const others = Object.entries(preview.columns).filter(([, named]) => named !== heading);
    const mapping = { ...Object.fromEntries(others), ...(column === '' ? {} : { [column]: heading }) };
    void log.look({ mapping });
  };
  return (
    <section aria-labelledby="headings" className={desk.stack}>
      <h2 id="headings">{words.headings}</h2>
      <SheetTable
        caption={words.headings}
        rows={preview.headings}
        rowKey={({ heading }) => heading}
        middle
        columns={[
          { heading: words.heading, names: true, cell: ({ heading }) => heading },
          { heading: words.samples, wide: true, cell: ({ samples }) => samples.join(' · ') },
          {
            heading: words.means,
            cell: ({ heading }) => (
              <NativeSelect
                aria-label={words.meansOf(heading)}
                value={meaningOf(heading)}
                data={[
                  { value: '', label: words.ignored },
                  ...CLIMATE_COLUMNS.map((value) => ({ value, label: words.columns[value] })),
                ]}
                onChange={(event) => mean(heading, event.currentTarget.value as ClimateColumn | '')}
              />
            ),
          },
        ]}
      />
    </section>
  );
}

type LogFault = LogPreview['faults'][number];

function FaultsPart({ preview: { faults, faultCount } }: { readonly preview: LogPreview }) {
  const { log: words } = useWords(DRY_ROOM_WORDS);
  if (faultCount === 0) return null;
  const columns: readonly SheetColumn<LogFault>[] = [
    { heading: words.line, names: true, cell: ({ line }) => line },
    { heading: words.heading, cell: ({ column }) => column },
    { heading: words.wrong, wide: true, cell: (fault) => workshopFaultWords(fault).what },
    { heading: words.mend, wide: true, cell: (fault) => workshopFaultWords(fault).mend },
  ];
  return (
    <section aria-labelledby="log-faults" className={desk.stack}>
      <h2 id="log-faults">{words.toMend(faultCount)}</h2>
      <SheetTable
        caption={words.toMend(faultCount)}
        columns={columns}
        rows={faults}
        rowKey={(fault) => JSON.stringify(fault)}
      />
    </section>
  );
}

function TakenPart({ log, preview }: PreviewProps) {
  const { log: words, celsius, percent } = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const navigate = useNavigate();
  const { fresh, known, first, last, rooms, samples, faultCount } = preview;
  const takeIn = async () => {
    const taken = await log.takeIn();
    if (taken === undefined) return;
    tell({ text: words.tookIn(taken) });
    const room = rooms[0];
    await navigate({ to: '/dry-room', search: room === undefined ? {} : { room } });
  };
  return (
    <section aria-labelledby="log-taken" className={desk.stack}>
      <h2 id="log-taken">{words.taken}</h2>
      <p role="status">
        {words.counts(figures.number(fresh), figures.number(known), rooms.join(', '))}{' '}
        {first !== undefined && last !== undefined && words.span(figures.moment(first), figures.moment(last))}
      </p>
      <SheetTable
        caption={words.taken}
        rows={samples}
        rowKey={({ line }) => line}
        columns={[
          { heading: words.line, names: true, cell: ({ line }) => line },
          { heading: words.columns.at, cell: ({ at }) => figures.moment(at) },
          { heading: words.columns.room, cell: ({ room }) => room },
          {
            heading: words.columns.temperature,
            figures: true,
            cell: ({ temperatureC }) => `${figures.number(temperatureC, 1)} ${celsius}`,
          },
          {
            heading: words.columns.humidity,
            figures: true,
            cell: ({ relativeHumidity }) => `${figures.number(relativeHumidity * 100, 1)} ${percent}`,
          },
        ]}
      />
      {faultCount > 0 && <p className="care">{words.mendFirst}</p>}
      {faultCount === 0 && fresh === 0 && <p>{words.nothing}</p>}
      {faultCount === 0 && fresh > 0 && (
        <div className={desk.row}>
          <Button kind="main" busy={log.busy} disabled={!log.isFresh} onClick={takeIn}>
            {words.takeIn(fresh)}
          </Button>
        </div>
      )}
    </section>
  );
}
