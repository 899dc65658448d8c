import type { BodyOf, RecordKind, StoredRecord } from '../contract/index.js';
import type { StringSums } from '../core/quality/index.js';
import type { Balance, Item, Movement, Unit } from '../core/stock/index.js';
import type { EndCheck } from '../core/winding/index.js';

/** The shop's records in one database, SQLite or PostgreSQL: the same answers from both. */
export interface Store {
  readonly engine: 'sqlite' | 'postgresql';
  /** Work that only looks; sees one moment throughout. */
  read<T>(work: (tx: ReadTransaction) => Promise<T>): Promise<T>;
  /**
   * Work that changes, whole or not at all. A thrown error rolls everything back. Writers queue, across all processes.
   * When the promise is fulfilled, what was written is on the disk. `StoreUnavailable` of `store.lost` may mean that
   * the answer alone was lost: repeat under the same request id.
   */
  write<T>(work: (tx: Transaction) => Promise<T>): Promise<T>;
  /** Told after every commit that wrote events, in the order of their numbers, whichever process wrote them. */
  onEvents(listener: (events: readonly StoredEvent[]) => void): () => void;
  /**
   * Copies the living SQLite database to a file that must not exist yet: one moment of it, while others write.
   * PostgreSQL has its own programs for this; there it throws.
   */
  backupTo(file: string): Promise<void>;
  /**
   * What is wrong with the database itself: pages, indexes, references, former versions that are missing. Empty where
   * it is sound. Reads a whole SQLite file without a pause (4 s a gigabyte), so not for a process that serves others.
   */
  integrity(): Promise<readonly IntegrityFault[]>;
  /** Ends after the work in hand; asked again, does nothing. */
  close(): Promise<void>;
}

export interface IntegrityFault {
  /** Which look found it: `pages`, `references`, `indexes`, `versions`, `sums`. */
  readonly check: string;
  readonly detail: string;
}

export interface ReadTransaction {
  readonly records: RecordReader;
  readonly ledger: LedgerReader;
  readonly readings: ReadingReader;
  readonly cautionReadings: CautionReadingReader;
  readonly quality: QualityReader;
  readonly journal: JournalReader;
  readonly events: EventReader;
  readonly access: AccessReader;
  readonly mappings: MappingReader;
  readonly tables: TableReader;
}

export interface Transaction extends ReadTransaction {
  readonly records: RecordWriter;
  readonly ledger: LedgerWriter;
  readonly readings: ReadingWriter;
  readonly cautionReadings: CautionReadingWriter;
  readonly journal: JournalWriter;
  readonly events: EventWriter;
  readonly access: AccessWriter;
  readonly repeats: RepeatTable;
  readonly mappings: MappingWriter;
  readonly tables: TableWriter;
}

/* ---- records ---- */

export interface ListQuery {
  /** Equal to; keys of the kind, or `state`. */
  readonly where?: Readonly<Record<string, string | number>>;
  /** Part of a text key, in any case: `smi` finds the player Smith. */
  readonly search?: string;
  /** Where the last page ended. */
  readonly after?: string;
  /** 1 to 500. */
  readonly limit: number;
  /** Newest first where left out. */
  readonly order?: 'newest' | 'oldest';
}

export interface Page<Item> {
  readonly items: readonly Item[];
  /** Give it as `after` for the next page; left out where this is the last. */
  readonly next?: string;
}

export interface RecordReader {
  get<Kind extends RecordKind>(kind: Kind, id: string): Promise<StoredRecord<BodyOf<Kind>> | undefined>;
  find<Kind extends RecordKind>(
    kind: Kind,
    where: Readonly<Record<string, string | number>>,
  ): Promise<StoredRecord<BodyOf<Kind>> | undefined>;
  list<Kind extends RecordKind>(kind: Kind, query: ListQuery): Promise<Page<StoredRecord<BodyOf<Kind>>>>;
  /** All of a kind, oldest first: for small catalogues. */
  all<Kind extends RecordKind>(
    kind: Kind,
    where?: Readonly<Record<string, string | number>>,
  ): Promise<readonly StoredRecord<BodyOf<Kind>>[]>;
  /** Those whose key lies between two texts, the ends among them, in the order of that key: readings of a time. */
  between<Kind extends RecordKind>(
    kind: Kind,
    key: string,
    ends: {
      readonly from?: string;
      readonly to?: string;
      /** The last so many of them. */
      readonly last?: number;
    },
  ): Promise<readonly StoredRecord<BodyOf<Kind>>[]>;
  /** Every version that was, oldest first, the present one last. */
  versions<Kind extends RecordKind>(kind: Kind, id: string): Promise<readonly StoredRecord<BodyOf<Kind>>[]>;
}

export interface RecordWriter extends RecordReader {
  insert<Kind extends RecordKind>(
    kind: Kind,
    record: NewRecord<BodyOf<Kind>>,
  ): Promise<StoredRecord<BodyOf<Kind>>>;
  /** Many new ones at once, for readings by the thousand. One that is taken refuses all of them. */
  insertAll<Kind extends RecordKind>(kind: Kind, records: readonly NewRecord<BodyOf<Kind>>[]): Promise<void>;
  /**
   * Over the version given; where another stands by now, `StaleVersion` is thrown with both. The state stays as it was
   * where none is given.
   */
  update<Kind extends RecordKind>(
    kind: Kind,
    change: RecordChange<BodyOf<Kind>>,
  ): Promise<StoredRecord<BodyOf<Kind>>>;
}

export interface NewRecord<Body> {
  readonly id: string;
  readonly state?: string;
  readonly body: Body;
  readonly at: string;
}

export interface RecordChange<Body> {
  readonly id: string;
  readonly expectedVersion: number;
  readonly state?: string;
  readonly body: Body;
  readonly at: string;
}

/* ---- ledger ---- */

export type { Balance };

export interface StoredMovement extends Movement {
  readonly id: string;
  readonly at: string;
  readonly by: string;
}

export interface LedgerReader {
  /** All lots together where none is named; wire by weight (mg) unless its length (mm) is asked for. */
  balance(account: string, item: string, lot?: string, unit?: Unit): Promise<number>;
  /** Non-zero balances; each given field narrows, `accountPrefix` such as `bin/`. */
  balances(query: {
    readonly account?: string;
    readonly accountPrefix?: string;
    readonly item?: string;
    readonly lot?: string;
  }): Promise<readonly Balance[]>;
  /** Movements that touch what is asked for, whole; `next` of the page before as `after`. Newest first where left out. */
  movements(query: {
    readonly account?: string;
    readonly item?: string;
    readonly lot?: string;
    readonly after?: string;
    readonly limit: number;
    readonly order?: 'newest' | 'oldest';
  }): Promise<Page<StoredMovement>>;
  /** What movements of a kind took from all accounts of a prefix since a moment, such as wire used off spools; what came in is
   * not set against it. */
  outflow(query: {
    readonly accountPrefix: string;
    readonly what: string;
    readonly since: string;
  }): Promise<readonly { readonly item: Item; readonly unit: Unit; readonly quantity: number }[]>;
  /** What lay in accounts of a prefix at some moment of a time: there when it began, or moved in before it ended. Each with
   * what lay there at the beginning and what came in; a balance that was nothing all the time is left out. */
  lyingDuring(query: {
    readonly accountPrefix: string;
    readonly from: string;
    readonly to: string;
  }): Promise<readonly LyingDuring[]>;
  /** Where the ledger breaks its laws, worked out anew from every entry; empty for a true one. Slow: for a check. */
  breaches(): Promise<readonly LedgerBreach[]>;
}

/** What lay in an account in a time. */
export interface LyingDuring extends Omit<Balance, 'quantity'> {
  /** When the time began. */
  readonly atFirst: number;
  /** Moved in while it lasted. */
  readonly cameIn: number;
}

/** A law that the stored ledger breaks, and where. */
export interface LedgerBreach {
  /** Entries of a movement that do not sum to zero, a running balance unlike its entries, an account below nothing. */
  readonly law: 'unbalanced' | 'other-balance' | 'below-zero';
  /** Empty where it is not about one movement. */
  readonly movementId: string;
  /** Empty where it is not about one account. */
  readonly account: string;
  readonly item: string;
  readonly lot: string;
  readonly unit: string;
  /** By how much: the sum, what the balance has too much, or the balance. */
  readonly quantity: number;
}

export interface LedgerWriter extends LedgerReader {
  /** Writes a movement and the balances it changes. Throws `Overdrawn` where an account that must not go below zero would. */
  post(movement: Movement & { readonly id: string; readonly at: string; readonly by: string }): Promise<void>;
}

/* ---- readings of the floor: many, small, append only ---- */

export interface TrialString {
  readonly id: string;
  readonly runId: string;
  readonly number: number;
  /** Which position of a two-at-once machine, 1 or 2. */
  readonly position: number;
  readonly verdict: 'open' | 'good' | 'scrap';
  /** What the machine stood at, in its own unit; of strings that were not dialled in by it left out. */
  readonly setting?: number;
  readonly setBy?: 'advice' | 'override';
  /** How its turns lie. */
  readonly seen?: 'gaps' | 'overlaps' | 'even';
  readonly at: string;
  readonly by: string;
}

export interface Measurement {
  readonly id: string;
  readonly runId: string;
  readonly trialStringId: string | null;
  readonly quantity: 'diameter' | 'mass' | 'length';
  /** SI: m or kg. */
  readonly value: number;
  readonly placeM: number | null;
  readonly rotationDeg: number | null;
  readonly instrument: string;
  readonly at: string;
  readonly by: string;
}

/** What was found of one end of a string or core, made at a bench. */
export interface EndCheckRecord extends EndCheck {
  readonly id: string;
  /** The run whose string it is, or whose core. */
  readonly runId: string;
  /** The bench where the end was made. */
  readonly machineId: string;
  readonly wireId: string;
  readonly spoolId: string | null;
  readonly end: 'ball' | 'loop';
  /** Of the wire, as known on the day; null where no strength was. */
  readonly leastBreakingN: number | null;
  readonly strengthFrom: 'certificate' | 'standard' | null;
  /** What it was pulled with. */
  readonly gauge: string;
  /** The entry that this one takes the place of; one without readings takes it back. */
  readonly insteadOf: string | null;
  readonly at: string;
  readonly by: string;
}

export interface Tally {
  readonly id: string;
  readonly runId: string | null;
  readonly lotId: string | null;
  readonly station: 'winder' | 'coiler';
  readonly outcome: 'good' | 'scrap';
  readonly reason: string;
  readonly count: number;
  readonly at: string;
  readonly by: string;
}

/** An entry that was taken back. The entry itself stays; no list of the floor's readings has it any more. */
export interface VoidedEntry {
  readonly id: string;
  readonly ofKind: 'tally' | 'measurement' | 'trial-string';
  readonly entryId: string;
  readonly runId: string | null;
  readonly lotId: string | null;
  readonly reason: string;
  readonly at: string;
  readonly by: string;
}

/** All readings of one quantity of one string. Strings that are no trial are told apart by the moment of writing down. */
export interface StringReadings {
  readonly runId: string;
  readonly trialStringId: string | null;
  /** Of the trial string; null for any other. */
  readonly trialNumber: number | null;
  readonly quantity: Measurement['quantity'];
  /** At how many rotations; 0 where none was told. */
  readonly rotations: number;
  readonly readings: number;
  /** m or kg. */
  readonly mean: number;
  /** When the first of them was written down. */
  readonly at: string;
  /** What they were taken with: the first by name, where a string was measured by several. */
  readonly instrument: string;
}

/** What was tried and counted of a run at its machine. */
export interface SetUpReadings {
  readonly runId: string;
  /** Trial strings, and how many of them were judged scrap. */
  readonly tried: number;
  readonly scrapped: number;
  readonly lastTriedAt: string;
  /** When a trial string was last measured; null where none was. */
  readonly lastReadAt: string | null;
  /** By the winder, the oldest first. */
  readonly counted: readonly Pick<Tally, 'outcome' | 'reason' | 'count' | 'at'>[];
}

export interface ReadingQuery {
  readonly runId?: string;
  readonly after?: string;
  readonly limit: number;
  readonly order?: 'newest' | 'oldest';
}

/** What was taken back is in none of these lists, nor is what was measured of a trial string that was. */
export interface ReadingReader {
  /** In the order of their numbers. */
  trialStrings(runId: string): Promise<readonly TrialString[]>;
  /** Runs that have a trial string whose setting was kept, the one tried last first; on one machine, or on all others. */
  runsDialledIn(query: {
    readonly machineId: string;
    readonly isElsewhere: boolean;
    readonly limit: number;
  }): Promise<readonly string[]>;
  /** Oldest first where no order is given. */
  measurements(query: ReadingQuery): Promise<Page<Measurement>>;
  /** Oldest first where no order is given. */
  tallies(query: ReadingQuery & { readonly lotId?: string }): Promise<Page<Tally>>;
  /** Oldest first where no order is given. */
  endChecks(
    query: ReadingQuery & {
      readonly wireId?: string;
      readonly spoolId?: string;
      readonly machineId?: string;
    },
  ): Promise<Page<EndCheckRecord>>;
  /** What was measured of every string, readings of one quantity taken together; oldest first. `since`: read then or later. */
  readingsByString(query: { readonly since?: string }): Promise<readonly StringReadings[]>;
  /** Of these runs, those that have a trial string. */
  setUpReadings(runIds: readonly string[]): Promise<readonly SetUpReadings[]>;
  /** By its id, taken back or not. */
  tally(id: string): Promise<Tally | undefined>;
  measurement(id: string): Promise<Measurement | undefined>;
  trialString(id: string): Promise<TrialString | undefined>;
  /** What was taken back of a run or of a lot, oldest first. */
  voidedEntries(of: { readonly runId?: string; readonly lotId?: string }): Promise<readonly VoidedEntry[]>;
  voidOf(entryId: string): Promise<VoidedEntry | undefined>;
}

export interface ReadingWriter extends ReadingReader {
  addTrialString(row: TrialString): Promise<void>;
  setVerdict(id: string, verdict: TrialString['verdict']): Promise<void>;
  addMeasurements(rows: readonly Measurement[]): Promise<void>;
  addTally(row: Tally): Promise<void>;
  /** Takes an entry back; once each. */
  voidEntry(row: VoidedEntry): Promise<void>;
  /** An id that is there already refuses all of them. */
  addEndChecks(rows: readonly EndCheckRecord[]): Promise<void>;
}

/* ---- cautions that were read, append only ---- */

export interface CautionReading {
  readonly id: string;
  readonly personId: string;
  readonly machineId: string;
  readonly cautions: readonly string[];
  /** Which words they had. */
  readonly edition: number;
  readonly at: string;
}

export interface CautionReadingReader {
  /** Newest first where no order is given. */
  list(query: {
    readonly machineId?: string;
    readonly personId?: string;
    readonly after?: string;
    readonly limit: number;
    readonly order?: 'newest' | 'oldest';
  }): Promise<Page<CautionReading>>;
}

export interface CautionReadingWriter extends CautionReadingReader {
  add(row: CautionReading): Promise<void>;
}

/* ---- what was measured, run by run: kept by the same transaction that writes runs and readings ---- */

/** A run that was begun, with what was measured of its strings. */
export interface MeasuredRun {
  readonly runId: string;
  readonly machineId: string;
  readonly recipeId: string;
  readonly recipeVersion: number;
  /** Of its strings, m. */
  readonly lengthM: number;
  readonly winderId: string | null;
  /** Every spool that went into it. */
  readonly spoolIds: readonly string[];
  readonly goodCount: number;
  readonly scrapCount: number;
  /** When it was begun. */
  readonly at: string;
  readonly sums: readonly StringSums[];
}

/** Strings of a run that somebody threw away for one reason. */
export interface ScrapOfRun {
  readonly runId: string;
  readonly station: 'winder' | 'coiler';
  readonly reason: string;
  readonly count: number;
}

export interface QualityReader {
  /** Runs begun then or later, and before, oldest first; or one run. */
  runs(
    of: { readonly since: string; readonly before: string } | { readonly runId: string },
  ): Promise<readonly MeasuredRun[]>;
  /** What was counted as scrap of those runs, at the machine or in coiling. */
  scrap(period: { readonly since: string; readonly before: string }): Promise<readonly ScrapOfRun[]>;
}

/* ---- journal and events ---- */

export interface JournalEntry {
  readonly id: string;
  readonly at: string;
  /** Person, token or console that did it. */
  readonly by: string;
  readonly useCase: string;
  /** What was asked, secrets left out. */
  readonly input: unknown;
  readonly touched: readonly { readonly kind: string; readonly id: string; readonly version: number }[];
}

export interface JournalReader {
  /** Newest first where no order is given. */
  list(query: {
    readonly recordId?: string;
    readonly by?: string;
    readonly after?: string;
    readonly limit: number;
    readonly order?: 'newest' | 'oldest';
  }): Promise<Page<JournalEntry>>;
}

export interface JournalWriter extends JournalReader {
  append(entry: JournalEntry): Promise<void>;
}

export interface NewEvent {
  /** Kind of record, or `movement`, `measurement`, `tally`. */
  readonly topic: string;
  readonly recordId: string;
  readonly version: number;
  readonly useCase: string;
  readonly at: string;
}

export interface StoredEvent extends NewEvent {
  /** Counts up without gaps that a reader could mistake: what `Last-Event-ID` names. */
  readonly number: number;
}

export interface EventReader {
  since(number: number, limit: number): Promise<readonly StoredEvent[]>;
  /** The number of the newest; 0 where there is none. */
  last(): Promise<number>;
  newest(): Promise<StoredEvent | undefined>;
}

export interface EventWriter extends EventReader {
  append(events: readonly NewEvent[]): Promise<void>;
}

/* ---- access: secrets are here only as hashes ---- */

export interface Credential {
  readonly personId: string;
  readonly kind: 'password' | 'pin' | 'sign-in-link';
  /** Parameters, salt and hash in one text. */
  readonly secretHash: string;
  readonly expiresAt: string | null;
}

export interface Session {
  readonly id: string;
  readonly personId: string;
  readonly secretHash: string;
  readonly via: 'password' | 'pin' | 'sign-in-link';
  readonly deviceId: string | null;
  readonly createdAt: string;
  readonly expiresAt: string;
  readonly revokedAt: string | null;
}

export interface Device {
  readonly id: string;
  readonly name: string;
  readonly secretHash: string;
  readonly enrolledAt: string;
  readonly revokedAt: string | null;
}

export interface Token {
  readonly id: string;
  readonly name: string;
  readonly personId: string;
  readonly secretHash: string;
  /** Permissions that it may use, of those that its person has. */
  readonly scopes: readonly string[];
  readonly createdAt: string;
  readonly expiresAt: string | null;
  readonly revokedAt: string | null;
}

/** Failed attempts, kept so that a restart forgives nobody. */
export interface Attempts {
  readonly subject: string;
  readonly failures: number;
  readonly lockedUntil: string | null;
}

export interface AccessReader {
  credential(personId: string, kind: Credential['kind']): Promise<Credential | undefined>;
  credentialByHash(kind: Credential['kind'], secretHash: string): Promise<Credential | undefined>;
  session(id: string): Promise<Session | undefined>;
  sessions(personId: string): Promise<readonly Session[]>;
  device(id: string): Promise<Device | undefined>;
  devices(): Promise<readonly Device[]>;
  token(id: string): Promise<Token | undefined>;
  tokens(): Promise<readonly Token[]>;
  attempts(subject: string): Promise<Attempts | undefined>;
}

export interface AccessWriter extends AccessReader {
  putCredential(credential: Credential): Promise<void>;
  dropCredential(personId: string, kind: Credential['kind']): Promise<void>;
  addSession(session: Session): Promise<void>;
  /** A session in use lives on: moves its `expiresAt`. */
  extendSession(id: string, expiresAt: string): Promise<void>;
  revokeSession(id: string, at: string): Promise<void>;
  /** All that are open of a person, or that began on a device; those revoked before keep their moment. */
  revokeSessions(
    of: { readonly personId: string } | { readonly deviceId: string },
    at: string,
  ): Promise<void>;
  /** Takes out sessions that expired or were revoked before a moment. */
  forgetSessions(endedBefore: string): Promise<void>;
  addDevice(device: Device): Promise<void>;
  revokeDevice(id: string, at: string): Promise<void>;
  addToken(token: Token): Promise<void>;
  revokeToken(id: string, at: string): Promise<void>;
  putAttempts(attempts: Attempts): Promise<void>;
}

/** Answers already given, by the client's own id of its request: a repeat gets the same answer and changes nothing. */
export interface RepeatTable {
  find(
    requestId: string,
  ): Promise<{ readonly useCase: string; readonly inputHash: string; readonly answer: unknown } | undefined>;
  save(row: {
    readonly requestId: string;
    readonly useCase: string;
    readonly inputHash: string;
    readonly answer: unknown;
    readonly at: string;
  }): Promise<void>;
}

/* ---- small tables ---- */

/** How the columns of a source of orders were understood the last time: our field -> the source's heading. */
export interface MappingReader {
  get(source: string): Promise<Readonly<Record<string, string>> | undefined>;
}

export interface MappingWriter extends MappingReader {
  put(source: string, mapping: Readonly<Record<string, string>>): Promise<void>;
}

/* ---- the tables as they lie in the database: for archives of the whole shop ---- */

/** A row of a table: columns by name. The same rows come out of both engines, and go into both. */
export type TableRow = Readonly<Record<string, string | number | null>>;

export interface TableReader {
  /** In the order in which they can be filled: what is referred to comes first. */
  readonly names: readonly string[];
  /** Rows in the order of the primary key. */
  rows(table: string, query: { readonly after?: string; readonly limit: number }): Promise<Page<TableRow>>;
}

export interface TableWriter extends TableReader {
  /** Puts rows in as they are, unchecked but for the database's own rules: only for an empty shop. */
  fill(table: string, rows: readonly TableRow[]): Promise<void>;
  /** After the last row: works out what no archive holds, since it follows from the rest. */
  filled(): Promise<void>;
}
