/** How many backups to keep of each age. */
export interface KeepRule {
  readonly daily: number;
  readonly weekly: number;
  readonly monthly: number;
}

/** A fortnight of days, two months of weeks, a year of months. Our own choice. */
export const USUAL_KEEP: KeepRule = { daily: 14, weekly: 8, monthly: 12 };

export interface DatedBackup {
  readonly path: string;
  /** When it was made, ISO 8601 UTC. */
  readonly at: string;
}

/**
 * Which backups the rule lets go: kept is the newest of each of the last so many days, weeks (from Monday) and
 * months that have one. The newest of all is always kept.
 */
export function backupsToDrop(backups: readonly DatedBackup[], rule: KeepRule): readonly DatedBackup[] {
  const newestFirst = [...backups].sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
  const kept = new Set<DatedBackup>(newestFirst.slice(0, 1));
  for (const [most, periodOf] of [
    [rule.daily, dayOf],
    [rule.weekly, mondayOf],
    [rule.monthly, monthOf],
  ] as const) {
    const periods = new Set<string>();
    for (const backup of newestFirst) {
      const period = periodOf(backup.at);
      if (periods.has(period) || periods.size >= most) continue;
      periods.add(period);
      kept.add(backup);
    }
  }
  return backups.filter((backup) => !kept.has(backup));
}

const dayOf = (at: string): string => at.slice(0, 10);
const monthOf = (at: string): string => at.slice(0, 7);

function mondayOf(at: string): string {
  const day = new Date(`${dayOf(at)}T00:00:00Z`);
  day.setUTCDate(day.getUTCDate() - ((day.getUTCDay() + 6) % 7));
  return day.toISOString().slice(0, 10);
}
