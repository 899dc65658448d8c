import type { BodyOf, ComplaintRegister, ReadingQuery, StoredRecord } from '../../contract/index.js';
import {
  addDays,
  byText,
  type CalendarDate,
  calendarDate,
  daysBetween,
  grouped,
  seededChance,
} from '../../core/foundation/index.js';
import { timeCluster } from '../../core/stats/index.js';
import {
  type ComplaintFault,
  complaintFault,
  complaintRate,
  complaintSources,
  type StringsOut,
  type Traits,
} from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { localClock } from '../local-clock.js';
import { type StringSources, stringSources } from './string-sources.js';

type Complaint = StoredRecord<BodyOf<'complaint'>>;
type Pack = StoredRecord<BodyOf<'pack'>>;

const USUAL_DAYS = 365;
/** Letters come weeks after the strings: of what was sent so lately not all are there yet. Common practice, no source. */
const FRESH_DAYS = 42;
/** The window in which letters are looked for to crowd, chosen before anybody looked. */
const CROWD_DAYS = 14;
/** Where splits are too many to reckon they are drawn, the same way every time. */
const SEED = 20_270_301;

/** Letters of some days, and the rates of complaints of the strings sent in these days. */
export async function complaintRegister(
  tx: ReadTransaction,
  asked: ReadingQuery<'complaint-register'>,
  now: string,
): Promise<ComplaintRegister> {
  const { from, to } = daysAsked(asked, localClock(now).date);
  const isAsked = ({ body }: Complaint) =>
    asked.fault === undefined || complaintFault(body.faultCode) === asked.fault;
  const complaints = (await tx.records.all('complaint')).filter(isAsked);
  const sources = await stringSources(tx);
  const written = complaints.filter(({ createdAt }) => within(dayOf(createdAt), from, to));
  const packs = (await tx.records.all('pack', { state: 'shipped' })).filter(
    ({ body }) => body.shippedAt !== undefined && within(dayOf(body.shippedAt), from, to),
  );
  const sent = stringsSent(packs, sources);
  const total = sent.reduce((sum, { strings }) => sum + strings, 0);
  const packOf = new Map(packs.map((pack) => [pack.id, pack]));
  const placed = complaints.flatMap((complaint) => {
    const pack = packOf.get(complaint.body.packId ?? '');
    return pack ? [{ complaint, traits: traitsOf(complaint, pack, sources) }] : [];
  });
  const tables = complaintSources(
    sent,
    placed.map(({ traits }) => traits),
    seededChance(SEED),
  );
  const freshFrom = addDays(localClock(now).date, -FRESH_DAYS);
  const fresh = packs.filter(({ body }) => dayOf(body.shippedAt!) > freshFrom);
  return {
    from,
    to,
    complaints: written.toReversed().map((complaint) => rowOf(complaint, sources)),
    ...(total > 0 ? { all: complaintRate(placed.length, total) } : {}),
    faults:
      total > 0
        ? faultRates(
            placed.map(({ complaint }) => complaint),
            total,
          )
        : [],
    unplaced: written.filter(({ body }) => body.packId === undefined).length,
    fresh: { days: FRESH_DAYS, strings: fresh.reduce((sum, { body }) => sum + body.picked.length, 0) },
    tables: tables
      .toSorted((a, b) => (a.p ?? 2) - (b.p ?? 2) || byText(a.by, b.by))
      .map(({ rates, ...table }) => ({ ...table, rates: [...rates] })),
    ...crowdOf(written, from, to),
  };
}

function daysAsked(
  { from, to }: ReadingQuery<'complaint-register'>,
  today: CalendarDate,
): { readonly from: CalendarDate; readonly to: CalendarDate } {
  const last = (to && calendarDate(to)) || today;
  const first = (from && calendarDate(from)) || addDays(last, 1 - USUAL_DAYS);
  return first > last ? { from: last, to: last } : { from: first, to: last };
}

const dayOf = (instant: string): CalendarDate => localClock(instant).date;
const within = (day: CalendarDate, from: CalendarDate, to: CalendarDate) => day >= from && day <= to;

/** Strings that went out, those alike taken together. */
function stringsSent(packs: readonly Pack[], { traitsOf: of }: StringSources): readonly StringsOut[] {
  const strings = packs.flatMap(({ body }) =>
    body.picked.map(({ lotId }) => ({ lotId, sent: dayOf(body.shippedAt!).slice(0, 7) })),
  );
  return [...grouped(strings, ({ lotId, sent }) => `${sent} ${lotId}`).values()].map((own) => {
    const { lotId, sent } = own[0]!;
    return { traits: { ...of(lotId), sent }, strings: own.length };
  });
}

/** A complaint that names no string of its pack is known by its day alone. */
const traitsOf = ({ body }: Complaint, pack: Pack, { traitsOf: of }: StringSources): Traits => ({
  ...(body.lotId === undefined ? {} : of(body.lotId)),
  sent: dayOf(pack.body.shippedAt!).slice(0, 7),
});

function faultRates(complaints: readonly Complaint[], strings: number): ComplaintRegister['faults'] {
  const byFault = grouped(complaints, ({ body }) => complaintFault(body.faultCode));
  return [...byFault]
    .map(([fault, own]) => ({ fault: fault as ComplaintFault, ...complaintRate(own.length, strings) }))
    .sort((a, b) => b.complaints - a.complaints || byText(a.fault, b.fault));
}

function rowOf(
  { id, createdAt, state, body }: Complaint,
  { lot: lotOf }: StringSources,
): ComplaintRegister['complaints'][number] {
  const lot = body.lotId === undefined ? undefined : lotOf(body.lotId);
  const fault: ComplaintFault = complaintFault(body.faultCode);
  return {
    id,
    at: createdAt,
    state,
    player: body.player,
    fault,
    ...(fault === body.faultCode ? {} : { said: body.faultCode }),
    ...(lot ? { stringKey: lot.body.stringKey, lot: lot.body.name } : {}),
    hasTrace: lot !== undefined,
  };
}

function crowdOf(
  written: readonly Complaint[],
  from: CalendarDate,
  to: CalendarDate,
): Pick<ComplaintRegister, 'crowd'> {
  const days = written.map(({ createdAt }) => daysBetween(from, dayOf(createdAt)));
  const crowd = timeCluster(days, { from: 0, to: daysBetween(from, to) + 1, window: CROWD_DAYS });
  if (!crowd.ok) return {};
  const { count, from: first, p } = crowd.value;
  return { crowd: { days: CROWD_DAYS, count, from: addDays(from, first), p } };
}
