import { Link } from '@tanstack/react-router';
import { wholeStringInWords } from '../../../contract/index.js';
import { useReading } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { Dialog } from '../../parts/dialog.js';
import { Empty } from '../../parts/empty.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';

interface LyingDialogProps {
  readonly span: { readonly from: string; readonly to: string };
  readonly onClose: () => void;
}

/** The lots that lay in bins in a time, and what the records can and cannot tell of it. */
export function LyingDialog({ span: { from, to }, onClose }: LyingDialogProps) {
  const { lying: words } = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  return (
    <Dialog open title={words.title(figures.moment(from), figures.moment(to))} onClose={onClose}>
      <p className="quiet small">{words.lead}</p>
      <Asked question={useReading('lots-lying-during', { from, to })} what={words.what}>
        {({ items }) =>
          items.length === 0 ? (
            <Empty what={words.none} />
          ) : (
            <>
              <p role="status">{words.count(items.length)}</p>
              <SheetTable
                caption={words.what}
                rows={items}
                rowKey={({ lotId }) => lotId}
                columns={[
                  {
                    heading: words.lot,
                    names: true,
                    cell: ({ lotId, lot }) => (
                      <Link to="/strings" search={{ lot: lotId }}>
                        {lot}
                      </Link>
                    ),
                  },
                  { heading: words.string, cell: ({ stringKey }) => wholeStringInWords(stringKey) },
                  { heading: words.bins, cell: ({ bins }) => bins.join(', ') },
                  {
                    heading: words.atFirst,
                    figures: true,
                    cell: ({ atFirst }) => figures.number(atFirst),
                  },
                  { heading: words.cameIn, figures: true, cell: ({ cameIn }) => figures.number(cameIn) },
                ]}
              />
            </>
          )
        }
      </Asked>
    </Dialog>
  );
}
