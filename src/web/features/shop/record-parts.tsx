import { Link } from '@tanstack/react-router';
import { wholeStringInWords } from '../../../contract/index.js';
import { ALLOYS } from '../../../core/materials/index.js';
import { stringKey } from '../../../core/sets/index.js';
import { formatGauge, formatMoney, pitchName } from '../../../core/units/index.js';
import { useAllRecords } from '../../api/use-records.js';
import { useShop } from '../../api/use-shop.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { PullsPart } from '../ends/pulls-part.js';
import { CautionReadingsPart } from './caution-readings-part.js';
import { DialDoors } from './dial-doors.js';
import { DialPlot } from './dial-plot.js';
import { RecordsList } from './form/records-list.js';
import { SetUpsPart } from './set-ups-part.js';
import { NEW_MACHINES, specsOfMachine } from './specs-of-machine.js';
import {
  NEW_BIN,
  NEW_INSTRUMENT,
  NEW_TUNING,
  NEW_WIRE,
  specsOfBin,
  specsOfInstrument,
  specsOfTuning,
  specsOfWire,
} from './specs-of-others.js';
import { WearPart } from './wear-part.js';
import { WearSummary } from './wear-summary.js';

export function MachinesPart() {
  const words = useWords(SHOP_WORDS);
  const figures = useFigures();
  const { machine: said } = words;
  return (
    <>
      <WearSummary />
      <RecordsList
        kind="machine"
        caption={words.parts.machines}
        nameHeading={said.columns.name}
        columns={[
          {
            heading: said.columns.kind,
            share: 3,
            cell: ({ body }) => said.kinds[body.kind === 'bench' ? 'bench' : body.drive],
          },
          {
            heading: said.columns.gauges,
            cell: ({ body: { gaugesThou } }) =>
              `${formatGauge(gaugesThou.least)}–${formatGauge(gaugesThou.most)}`,
          },
          { heading: said.columns.longest, cell: ({ body }) => figures.length(body.longestStringM) },
          { heading: said.columns.positions, figures: true, cell: ({ body }) => body.positions },
        ]}
        blanks={(['servo', 'gear', 'bench'] as const).map((kind) => ({
          label: `${words.edit.newOne.machine}: ${said.kinds[kind]}`,
          body: NEW_MACHINES[kind],
        }))}
        specsOf={(body) => specsOfMachine(body, words)}
        below={(body, record) => (
          <>
            {body?.kind === 'winder' && body.drive === 'gear' && <DialPlot rows={body.dialTable} />}
            {body?.kind === 'winder' && record && (
              <DialDoors machineId={record.id} isGear={body.drive === 'gear'} />
            )}
            {body?.kind === 'winder' && record && (
              <WearPart machineId={record.id} machineName={record.body.name} isGear={body.drive === 'gear'} />
            )}
            {body?.kind === 'winder' && record && (
              <SetUpsPart machineId={record.id} machineName={record.body.name} />
            )}
            {body?.kind === 'bench' && record && <PullsPart query={{ machineId: record.id }} />}
            {record && <CautionReadingsPart machineId={record.id} />}
          </>
        )}
      />
    </>
  );
}

export function WiresPart() {
  const words = useWords(SHOP_WORDS);
  const figures = useFigures();
  const rates = useShop().data?.rates;
  const { wire: said } = words;
  return (
    <RecordsList
      kind="wire"
      caption={words.parts.wires}
      nameHeading={said.columns.name}
      columns={[
        { heading: said.columns.use, cell: ({ body }) => said.uses[body.use] },
        { heading: said.columns.alloy, share: 2, cell: ({ body }) => ALLOYS[body.alloy].name },
        { heading: said.columns.size, figures: true, cell: ({ body }) => figures.diameter(body.sizeM) },
        {
          heading: said.columns.price,
          figures: true,
          cell: ({ body }) => (rates ? formatMoney(body.priceMinorPerKg, rates) : words.none),
        },
      ]}
      blanks={[{ label: words.edit.newOne.wire, body: NEW_WIRE }]}
      specsOf={() => specsOfWire(words)}
      below={(_, record) =>
        record && (
          <p>
            <Link to="/wire" search={{ wire: record.id }}>
              {said.inWire}
            </Link>
          </p>
        )
      }
    />
  );
}

export function BinsPart() {
  const words = useWords(SHOP_WORDS);
  const shop = useShop().data;
  const bins = useAllRecords('bin').data ?? [];
  const { bin: said } = words;
  const keys = new Set([
    ...(shop?.sets ?? []).flatMap(({ strings }) => strings.map(stringKey)),
    ...(shop?.strings ?? []).map(({ spec }) => stringKey(spec)),
    ...bins.flatMap(({ body }) => (body.stringKey === undefined ? [] : [body.stringKey])),
  ]);
  const kinds = [...keys].map((value) => ({ value, label: wholeStringInWords(value) }));
  return (
    <RecordsList
      kind="bin"
      caption={words.parts.bins}
      nameHeading={said.columns.name}
      columns={[
        { heading: said.columns.walk, figures: true, cell: ({ body }) => body.walkOrder },
        {
          heading: said.columns.holds,
          share: 5,
          cell: ({ body }) =>
            body.stringKey === undefined ? said.anyString : wholeStringInWords(body.stringKey),
        },
        { heading: said.columns.level, figures: true, cell: ({ body }) => body.reorderLevel },
      ]}
      blanks={[{ label: words.edit.newOne.bin, body: NEW_BIN }]}
      specsOf={() => specsOfBin(words, kinds)}
      inOrder={(a, b) => a.body.walkOrder - b.body.walkOrder}
    />
  );
}

export function InstrumentsPart() {
  const words = useWords(SHOP_WORDS);
  const figures = useFigures();
  const { instrument: said } = words;
  return (
    <RecordsList
      kind="instrument"
      caption={words.parts.instruments}
      nameHeading={said.columns.name}
      columns={[
        { heading: said.columns.strings, figures: true, cell: ({ body }) => body.scaleLengthsM.length },
        {
          heading: said.columns.scales,
          share: 4,
          cell: ({ body }) => [...new Set(body.scaleLengthsM.map(figures.length))].join(', '),
        },
      ]}
      blanks={[{ label: words.edit.newOne.instrument, body: NEW_INSTRUMENT }]}
      specsOf={() => specsOfInstrument(words)}
    />
  );
}

export function TuningsPart() {
  const words = useWords(SHOP_WORDS);
  const figures = useFigures();
  const { tuning: said } = words;
  return (
    <RecordsList
      kind="tuning"
      caption={words.parts.tunings}
      nameHeading={said.columns.name}
      columns={[
        {
          heading: said.columns.notes,
          share: 4,
          cell: ({ body }) => body.pitches.map(pitchName).join(' '),
        },
        {
          heading: said.columns.reference,
          figures: true,
          cell: ({ body }) => `${figures.number(body.referenceHz, 1)} Hz`,
        },
      ]}
      blanks={[{ label: words.edit.newOne.tuning, body: NEW_TUNING }]}
      specsOf={() => specsOfTuning(words)}
    />
  );
}
