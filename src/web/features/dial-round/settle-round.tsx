import { useMay, useSession } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { useWho } from '../../api/use-who.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_ROUND_WORDS } from '../../words/dial-round.js';
import { useWords } from '../../words/language.js';
import type { DialRound } from './use-dial-rounds.js';

interface SettleRoundProps {
  readonly round: DialRound;
  readonly isDone: boolean;
  readonly isOnTheWay: boolean;
}

/** Adopting the table, giving the round up: with a line only, since the machine is set by it from then on. */
export function SettleRound({ round, isDone, isOnTheWay }: SettleRoundProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const may = useMay();
  const tell = useTell();
  const { standing } = useSession();
  const isOnline = standing.kind === 'somebody' && standing.isOnline;
  const adopt = useDo('adopt-dial-round');
  const undo = useDo('undo-dial-round');
  const drop = useDo('drop-dial-round');
  const seen = { id: round.id, expectedVersion: round.version };
  const onAdopt = async () => {
    const answer = await adopt.run(seen);
    if (!answer.ok) return;
    const { id, version } = answer.value.round;
    tell({ text: words.adopted, undo: () => undo.run({ id, expectedVersion: version }) });
  };
  const isReady = isOnline && !isOnTheWay && round.version > 0;
  return (
    <div className={styles.onward}>
      {isDone && may('shop.edit') && (
        <Button kind="main" size="floor" busy={adopt.busy} disabled={!isReady} onClick={() => void onAdopt()}>
          {words.adopt}
        </Button>
      )}
      {isDone && !may('shop.edit') && <p>{words.ownerAdopts}</p>}
      {!isReady && <p className="quiet">{words.waitsForLine}</p>}
      <Button size="floor" busy={drop.busy} disabled={!isReady} onClick={() => void drop.run(seen)}>
        {words.drop}
      </Button>
      <ProblemBox problem={adopt.problem ?? undo.problem ?? drop.problem} />
    </div>
  );
}

/** The last table that was measured and adopted, with the way back. */
export function LastAdopted({ round }: { readonly round: DialRound }) {
  const words = useWords(DIAL_ROUND_WORDS);
  const figures = useFigures();
  const who = useWho();
  const may = useMay();
  const undo = useDo('undo-dial-round');
  const { adopted } = round.body;
  if (!adopted) return null;
  return (
    <div className={styles.part}>
      <p>{words.inForceSince(who(adopted.by), figures.moment(adopted.at))}</p>
      {may('shop.edit') && (
        <div className={styles.doing}>
          <Button
            busy={undo.busy}
            onClick={() => void undo.run({ id: round.id, expectedVersion: round.version })}
          >
            {words.putBack}
          </Button>
        </div>
      )}
      <ProblemBox problem={undo.problem} />
    </div>
  );
}
