import { Link, type LinkProps } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { Need } from '../../../contract/index.js';
import { complaintFaultInWords, stringKeyInWords, wholeStringInWords } from '../../../contract/index.js';
import { complaintFault } from '../../../core/stock/index.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { TODAY_WORDS } from '../../words/today.js';
import { ComplaintPart } from './complaint-part.js';
import { DryRoomFigure, WireFigure } from './need-figures.js';
import styles from './needs-part.module.css';

/** One thing that needs a person: what it is, where it is mended, and why. */
export function NeedItem({ need }: { readonly need: Need }) {
  const words = useWords(TODAY_WORDS);
  const figures = useFigures();
  const { title, place, sentence, beside } = told(need, words, figures);
  return (
    <li className={styles.need}>
      <p className={styles.title}>{place ? <Link {...place}>{title}</Link> : title}</p>
      <div className={styles.sentence}>
        <p>{sentence}</p>
        {beside}
      </div>
    </li>
  );
}

interface Told {
  readonly title: string;
  /** Where it is mended. */
  readonly place?: LinkProps;
  readonly sentence: ReactNode;
  readonly beside?: ReactNode;
}

type TodayWords = ReturnType<typeof useWords<(typeof TODAY_WORDS)['en']>>;

function told(need: Need, words: TodayWords, figures: Figures): Told {
  switch (need.kind) {
    case 'order-late':
    case 'order-due': {
      const due = figures.date(need.due);
      const when =
        need.kind === 'order-late' ? words.late(need.daysLate, due) : words.due(need.daysLeft, due);
      return {
        title: words.order(need.number, need.player),
        place: { to: '/orders/$id', params: { id: need.orderId } },
        sentence: `${when} ${words.orderStates[need.state] ?? ''}`,
      };
    }
    case 'run-paused':
      return {
        title: words.run(need.name, stringKeyInWords(need.stringKey).short),
        place: { to: '/runs/$id', params: { id: need.runId } },
        sentence: words.paused(need.machine, figures.moment(need.since)),
      };
    case 'lot-on-hold':
    case 'lot-in-check': {
      const since = figures.moment(need.since);
      return {
        title: words.lot(need.name, wholeStringInWords(need.stringKey)),
        place: { to: '/strings', search: { lot: need.lotId } },
        sentence:
          need.kind === 'lot-on-hold' ? words.held(need.reason, since) : words.inCheck(need.strings, since),
      };
    }
    case 'wire-low':
      return {
        title: need.name,
        place: { to: '/wire', search: { wire: need.wireId } },
        sentence: <WireFigure need={need} />,
      };
    case 'dry-room-out':
      return {
        title: need.room,
        place: { to: '/dry-room' },
        sentence: <DryRoomFigure need={need} />,
      };
    case 'dry-room-silent':
      return {
        title: need.room === '' ? words.aDryRoom : need.room,
        place: { to: '/dry-room' },
        sentence: need.since === undefined ? words.neverRead : words.silent(figures.moment(need.since)),
      };
    case 'request-waiting':
      return {
        title: need.player,
        place: { to: '/requests/$id', params: { id: need.requestId } },
        sentence: words.waits(figures.moment(need.since)),
      };
    case 'complaint-open':
      return {
        title: words.complaint(need.player, complaintFaultInWords(complaintFault(need.faultCode))),
        place: { to: '/complaints/$id', params: { id: need.complaintId } },
        sentence: words.complained(figures.moment(need.since)),
        beside: <ComplaintPart complaintId={need.complaintId} player={need.player} />,
      };
    case 'clock-behind':
      return {
        title: words.clock,
        sentence: words.clockSays(figures.number(need.behindMinutes), figures.moment(need.computerSays)),
      };
  }
}
