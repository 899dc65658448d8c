import type { Need, Permission, ReadingAnswer } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { SetBack } from '../clock.js';
import type { Actor } from '../use-case.js';
import { dryRoomNeeds } from './dry-room-needs.js';
import type { NeedsOf } from './needs-of.js';
import { complaintNeeds, lotNeeds, orderNeeds, requestNeeds, runNeeds } from './record-needs.js';
import { wireNeeds } from './wire-needs.js';

/** Who asks, when, and what is known of the computer's clock. */
export interface NeedsAsked {
  readonly actor: Pick<Actor, 'permissions'>;
  readonly now: string;
  readonly setBack?: SetBack;
}

/** Where needs come from, each for those who may read what it is about. */
const SOURCES: readonly { readonly permission: Permission; readonly needs: NeedsOf }[] = [
  { permission: 'order.read', needs: orderNeeds },
  { permission: 'run.read', needs: runNeeds },
  { permission: 'stock.read', needs: lotNeeds },
  { permission: 'stock.read', needs: wireNeeds },
  { permission: 'stock.read', needs: dryRoomNeeds },
  { permission: 'request.read', needs: requestNeeds },
  { permission: 'complaint.read', needs: complaintNeeds },
];

const URGENCIES: readonly Need['urgency'][] = ['now', 'soon', 'in-time'];

/** What needs a person now, of what the asker may read; the most urgent first. */
export async function needsSeen(
  tx: ReadTransaction,
  { actor, now, setBack }: NeedsAsked,
): Promise<ReadingAnswer<'needs'>> {
  const needs: Need[] = actor.permissions.has('shop.edit') ? [...clockNeeds(setBack)] : [];
  for (const source of SOURCES)
    if (actor.permissions.has(source.permission)) needs.push(...(await source.needs(tx, now)));
  return {
    at: now,
    needs: needs.toSorted((a, b) => URGENCIES.indexOf(a.urgency) - URGENCIES.indexOf(b.urgency)),
  };
}

const clockNeeds = (setBack: SetBack | undefined): readonly Need[] =>
  setBack
    ? [
        {
          kind: 'clock-behind',
          urgency: 'now',
          computerSays: setBack.computerSays,
          behindMinutes: setBack.behindMs / 60_000,
        },
      ]
    : [];
