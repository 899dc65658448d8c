import { SegmentedControl } from '@mantine/core';
import { useMemo, useState } from 'react';
import type { Day } from '../../../core/day/index.js';
import { Picture } from '../../parts/picture.js';
import { type LaneScope, lanesOf } from './lanes-of.js';
import { LanesPicture } from './lanes-picture.js';
import { LanesTable } from './lanes-table.js';

/** The plan as lanes of machines over working time, or as a table of runs. */
export function PlanPart({ day }: { readonly day: Day }) {
  const [scope, setScope] = useState<LaneScope>('day');
  const lanes = useMemo(() => lanesOf(day, scope), [day, scope]);
  if (!lanes) {
    return (
      <section aria-labelledby="plan">
        <h2 id="plan">Plan</h2>
        <p className="quiet">No machine runs.</p>
      </section>
    );
  }
  return (
    <Picture
      title="Plan"
      beside={
        <SegmentedControl
          aria-label="How much of the plan"
          data={[
            { value: 'day', label: 'This day' },
            { value: 'plan', label: 'Whole plan' },
          ]}
          value={scope}
          onChange={(wanted) => setScope(wanted as LaneScope)}
        />
      }
      picture={<LanesPicture key={scope} day={day} lanes={lanes} scope={scope} />}
      table={<LanesTable day={day} lanes={lanes.lanes} />}
    />
  );
}
