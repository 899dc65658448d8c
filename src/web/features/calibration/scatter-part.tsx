import { NativeSelect, SegmentedControl } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { CalibrationView } from '../../../contract/index.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { Picture } from '../../parts/picture.js';
import { useFigures } from '../../sight/figures.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';
import { ScatterPicture } from './scatter-picture.js';
import {
  type CalibrationPoint,
  offOf,
  ordinaryWithin,
  pointsOf,
  type Quantity,
  shareWithin,
} from './shown-points.js';
import { useCalibrationNames } from './use-calibration-names.js';

/** Strings as they came out beside what was expected of them. */
export function ScatterPart({ view }: { readonly view: CalibrationView }) {
  const words = useWords(CALIBRATION_WORDS);
  const figures = useFigures();
  const names = useCalibrationNames(view);
  const [by, setBy] = useState<Quantity>('diameter');
  const [familyKey, setFamilyKey] = useState('');
  const { points: all, bands } = by === 'diameter' ? view.diameters : view.weights;
  const points = pointsOf(all, by, familyKey);
  const within = ordinaryWithin(view, by);
  const shown = familyKey === '' ? bands : [];
  const said = { points, bands: shown, within, by };
  return (
    <div className={desk.part}>
      <Picture
        title={words.scatter.title}
        beside={
          <SegmentedControl
            aria-label={words.scatter.by}
            data={[
              { value: 'diameter', label: words.scatter.quantities.diameter },
              { value: 'weight', label: words.scatter.quantities.weight },
            ]}
            value={by}
            onChange={(wanted) => setBy(wanted as Quantity)}
          />
        }
        picture={points.length === 0 ? <Empty what={words.scatter.none} /> : <ScatterPicture {...said} />}
        table={<PointsTable view={view} points={points} by={by} />}
        caption={
          <p className="quiet small">
            {words.scatter.caption(
              points.length,
              figures.share(shareWithin(points, by, within)),
              shown.reduce((sum, { count }) => sum + count, 0),
            )}
          </p>
        }
      />
      <NativeSelect
        className={desk.narrowField}
        label={words.scatter.family}
        value={familyKey}
        onChange={(event) => setFamilyKey(event.currentTarget.value)}
        data={[
          { value: '', label: words.scatter.allFamilies },
          ...view.families.map(({ key, family }) => ({ value: key, label: names.family(family) })),
        ]}
      />
    </div>
  );
}

interface PointsTableProps {
  readonly view: CalibrationView;
  readonly points: readonly CalibrationPoint[];
  readonly by: Quantity;
}

function PointsTable({ view, points, by }: PointsTableProps) {
  const words = useWords(CALIBRATION_WORDS);
  const figures = useFigures();
  const names = useCalibrationNames(view);
  const size = by === 'diameter' ? figures.diameter : figures.unitWeight;
  const { columns } = words.scatter;
  const all: readonly LongColumn<CalibrationPoint>[] = [
    {
      heading: columns.recipe,
      share: 3,
      cell: ({ recipeId, runId }) => (
        <Link to="/runs/$id" params={{ id: runId }}>
          {names.recipe(recipeId)}
        </Link>
      ),
    },
    { heading: columns.machine, share: 2, cell: ({ machineId }) => names.machine(machineId) },
    { heading: columns.predicted, share: 2, figures: true, cell: ({ predicted }) => size(predicted) },
    { heading: columns.measured, share: 2, figures: true, cell: ({ measured }) => size(measured) },
    {
      heading: columns.off,
      share: 2,
      figures: true,
      cell: (point) =>
        by === 'diameter'
          ? figures.slight(offOf(point, by))
          : `${figures.number(offOf(point, by) * 100, 2)} %`,
    },
    {
      heading: columns.counts,
      share: 2,
      figures: true,
      cell: ({ weight, isFlagged }) =>
        isFlagged ? words.scatter.flagged(figures.share(weight)) : figures.share(weight),
    },
  ];
  return (
    <LongTable
      caption={words.scatter.title}
      columns={all}
      rows={points}
      rowKey={({ stringId, runId }) => `${runId} ${stringId}`}
      isWide
    />
  );
}
