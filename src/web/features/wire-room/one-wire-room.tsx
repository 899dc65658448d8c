import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { ALLOYS, STRENGTH_TABLES, tensileStrength } from '../../../core/materials/index.js';
import { formatMoney } from '../../../core/units/index.js';
import { useMay } from '../../api/session.js';
import { useShop } from '../../api/use-shop.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type Fact, Facts } from '../../parts/facts.js';
import { MeasureBar } from '../../parts/measure-bar.js';
import { RoomTitle } from '../../parts/room-title.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import { PullsPart } from '../ends/pulls-part.js';
import { MovementsPart } from '../movements/movements-part.js';
import { ReceiveDialog } from './receive-dialog.js';
import { SpoolState } from './spool-state.js';
import { type SpoolLine, unitWeightOf, type WireLine, type WireRecord } from './wire-book.js';
import { CoverFigure, LengthFigure } from './wire-figures.js';

interface OneWireRoomProps {
  readonly line: WireLine;
  readonly lines: readonly WireLine[];
}

/** One kind of wire: its figures, its spools, what was moved of it. */
export function OneWireRoom({ line, lines }: OneWireRoomProps) {
  const words = useWords(WIRE_WORDS);
  const may = useMay();
  const [receiving, setReceiving] = useState(false);
  const { wire, emptied } = line;
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={wire.body.name} />
          <p className={desk.lead}>{ALLOYS[wire.body.alloy].designation}</p>
        </div>
        <div className={desk.row}>
          <Link to="/wire" search={{}}>
            {words.all}
          </Link>
          {may('wire.receive') && <Button onClick={() => setReceiving(true)}>{words.receive}</Button>}
        </div>
      </div>
      <Facts facts={useWireFacts(line)} />
      <section className={desk.part} aria-labelledby="spools">
        <h2 id="spools">{words.spools}</h2>
        <SpoolTable line={line} />
        {emptied.length > 0 && <p className="quiet">{words.emptied(emptied.length)}</p>}
      </section>
      {line.wire.body.use !== 'wrap' && <PullsPart query={{ wireId: wire.id }} />}
      <MovementsPart item={`wire/${wire.id}`} />
      {receiving && <ReceiveDialog lines={lines} wireId={wire.id} onClose={() => setReceiving(false)} />}
    </div>
  );
}

function SpoolTable({ line: { wire, spools } }: { readonly line: WireLine }) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const { spoolColumns: heads } = words;
  if (spools.length === 0) return <p className="quiet">{words.noneOnHand}</p>;
  const fullest = Math.max(...spools.map(({ kg }) => kg));
  const columns: readonly SheetColumn<SpoolLine>[] = [
    {
      heading: heads.spool,
      names: true,
      cell: ({ spool }) => (
        <Link to="/wire" search={{ spool: spool.id }}>
          {spool.body.name}
        </Link>
      ),
    },
    { heading: heads.lot, cell: ({ spool }) => spool.body.lot },
    { heading: heads.state, cell: ({ spool }) => <SpoolState state={spool.state} /> },
    { heading: heads.kg, figures: true, cell: ({ kg }) => figures.weight(kg) },
    {
      heading: heads.metres,
      figures: true,
      cell: ({ spool, kg, metres }) => (
        <LengthFigure wire={wire} what={spool.body.name} kg={kg} metres={metres} />
      ),
    },
    { heading: heads.share, wide: true, cell: ({ kg }) => <MeasureBar value={kg} full={fullest} /> },
    {
      heading: heads.received,
      whole: true,
      cell: ({ spool }) => figures.date(spool.body.receivedAt.slice(0, 10)),
    },
  ];
  return (
    <SheetTable
      caption={words.spools}
      columns={columns}
      rows={spools}
      rowKey={({ spool }) => spool.id}
      middle
    />
  );
}

function useWireFacts(line: WireLine): readonly Fact[] {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const rates = useShop().data?.rates;
  const { facts } = words;
  const { wire, kg, metres } = line;
  const { body } = wire;
  return [
    { name: facts.onHand, value: figures.weight(kg) },
    {
      name: facts.length,
      value: <LengthFigure wire={wire} what={body.name} kg={kg} metres={metres} />,
    },
    { name: facts.cover, value: <CoverFigure line={line} /> },
    {
      name: facts.size,
      value: figures.diameter(body.sizeM),
      under: body.shape === 'hex' ? words.hex : words.round,
    },
    {
      name: facts.unitWeight,
      value: (
        <Explained
          name={facts.unitWeight}
          what={words.unitWeightWhat}
          formula={words.unitWeightFormula(body.shape)}
          inputs={[
            { name: words.lengthInputs.size, value: figures.diameter(body.sizeM) },
            {
              name: words.lengthInputs.density,
              value: `${figures.number(ALLOYS[body.alloy].densityKgPerM3.value)} kg/m³`,
            },
          ]}
          source={words.lengthSource}
        >
          {figures.unitWeight(unitWeightOf(wire))}
        </Explained>
      ),
    },
    ...(body.use === 'core' ? [{ name: facts.strength, value: <StrengthFigure wire={wire} /> }] : []),
    ...(rates ? [{ name: facts.price, value: words.perKg(formatMoney(body.priceMinorPerKg, rates)) }] : []),
  ];
}

function StrengthFigure({ wire: { body } }: { readonly wire: WireRecord }) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const { certifiedStrengthPa, strengthTable: table, sizeM } = body;
  const asked = table && tensileStrength({ table, diameterM: sizeM, reading: 'conservative' });
  const strengthPa = certifiedStrengthPa ?? (asked?.ok ? asked.value.minimumPa : undefined);
  if (strengthPa === undefined) return '—';
  return (
    <Explained
      name={words.facts.strength}
      what={words.strengthWhat}
      inputs={[
        ...(table
          ? [{ name: words.strengthInputs.standard, value: STRENGTH_TABLES[table].designation }]
          : []),
        { name: words.strengthInputs.size, value: figures.diameter(sizeM) },
        ...(asked?.ok
          ? [{ name: words.strengthInputs.row, value: figures.diameter(asked.value.rowDiameterM) }]
          : []),
      ]}
      source={certifiedStrengthPa === undefined ? words.strengthSource : words.strengthCertified}
    >
      {figures.stress(strengthPa)}
    </Explained>
  );
}
