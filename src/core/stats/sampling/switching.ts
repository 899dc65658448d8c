/** How hard a supplier's or a machine's lots are looked at. */
export type Inspection = 'normal' | 'tightened' | 'stopped';

/**
 * How the next lot is looked at after these, oldest first: tightened after 2 of 5 or fewer lots in a row were refused,
 * back after 5 accepted in a row, stopped when 5 were refused while tightened (ISO 2859-1:1999, clause 9.3, as restated
 * by others; reduced inspection is left out).
 */
export function nextInspection(accepted: readonly boolean[]): Inspection {
  let state: Inspection = 'normal';
  let since: boolean[] = [];
  for (const wasAccepted of accepted) {
    if (state === 'stopped') return state;
    since.push(wasAccepted);
    const next = following(state, since);
    if (next !== state) since = [];
    state = next;
  }
  return state;
}

function following(state: Inspection, since: readonly boolean[]): Inspection {
  const refused = (lots: readonly boolean[]): number => lots.filter((wasAccepted) => !wasAccepted).length;
  if (state === 'normal') return refused(since.slice(-5)) >= 2 ? 'tightened' : 'normal';
  if (since.length >= 5 && refused(since.slice(-5)) === 0) return 'normal';
  return refused(since) >= 5 ? 'stopped' : state;
}
