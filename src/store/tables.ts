import type { Transaction as KyselyTransaction } from 'kysely';
import type { LedgerTables } from './ledger-tables.js';

/** A transaction as the queries of this layer take it, alike on both engines. */
export type Sql = KyselyTransaction<Tables>;

/**
 * The rows of every table. Lowest common ground of the engines: text, whole numbers, floating point and null; truth
 * values are states or times, JSON is text, times are ISO 8601 text of fixed width.
 */
export interface Tables extends LedgerTables {
  /** Stands for any of the tables of records, which differ only in their key columns. */
  readonly any_records: RecordRow;
  readonly record_versions: RecordVersionRow;
  readonly trial_strings: TrialStringRow;
  readonly measurements: MeasurementRow;
  readonly end_checks: EndCheckRow;
  readonly tallies: TallyRow;
  readonly voided_entries: VoidedEntryRow;
  readonly caution_readings: CautionReadingRow;
  readonly run_facts: RunFactsRow;
  readonly string_sums: StringSumsRow;
  readonly journal: JournalRow;
  readonly journal_touched: JournalTouchedRow;
  readonly events: EventRow;
  readonly credentials: CredentialRow;
  readonly devices: DeviceRow;
  readonly sessions: SessionRow;
  readonly tokens: TokenRow;
  readonly attempts: AttemptsRow;
  readonly repeats: RepeatRow;
  readonly column_mappings: ColumnMappingRow;
  readonly migrations: MigrationRow;
}

export interface RecordRow {
  id: string;
  version: number;
  state: string;
  created_at: string;
  updated_at: string;
  /** What a search looks through: names and keys in lower case, by the rules of Unicode on both engines. */
  search_text: string;
  /** JSON. */
  body: string;
}

/** A version that is no longer the present one. */
export interface RecordVersionRow {
  kind: string;
  record_id: string;
  version: number;
  state: string;
  created_at: string;
  updated_at: string;
  body: string;
}

export interface TrialStringRow {
  id: string;
  run_id: string;
  number: number;
  position: number;
  verdict: string;
  setting: number | null;
  set_by: string | null;
  seen: string | null;
  at: string;
  by: string;
}

export interface MeasurementRow {
  id: string;
  run_id: string;
  trial_string_id: string | null;
  quantity: string;
  value: number;
  place_m: number | null;
  rotation_deg: number | null;
  instrument: string;
  at: string;
  by: string;
}

export interface EndCheckRow {
  id: string;
  run_id: string;
  machine_id: string;
  wire_id: string;
  spool_id: string | null;
  string_end: string;
  length_m: number | null;
  twists: number | null;
  tail_m: number | null;
  seat: string | null;
  force_n: number | null;
  came: string | null;
  least_breaking_n: number | null;
  strength_from: string | null;
  gauge: string;
  instead_of: string | null;
  at: string;
  by: string;
}

export interface TallyRow {
  id: string;
  run_id: string | null;
  lot_id: string | null;
  station: string;
  outcome: string;
  reason: string;
  count: number;
  at: string;
  by: string;
}

export interface VoidedEntryRow {
  id: string;
  of_kind: string;
  entry_id: string;
  run_id: string | null;
  lot_id: string | null;
  reason: string;
  at: string;
  by: string;
}

export interface CautionReadingRow {
  id: string;
  person_id: string;
  machine_id: string;
  /** JSON. */
  cautions: string;
  edition: number;
  at: string;
}

/** What the quality room asks of a run that was begun. */
export interface RunFactsRow {
  run_id: string;
  machine_id: string;
  recipe_id: string;
  recipe_version: number;
  length_m: number;
  winder_id: string | null;
  /** Every spool that went into it, by id, spaces between. */
  spool_ids: string;
  good_count: number;
  scrap_count: number;
  at: string;
}

/** What was measured of strings of one run by one instrument, taken together. Truth values are 0 and 1. */
export interface StringSumsRow {
  run_id: string;
  instrument: string;
  is_first: number;
  is_largest: number;
  strings: number;
  mean_m: number;
  squares_m2: number;
  along_squares_m2: number;
  along_degrees: number;
  weighed: number;
  mean_kg: number;
  squares_kg2: number;
  readings: number;
  first_at: string;
  last_at: string;
}

export interface JournalRow {
  id: string;
  at: string;
  by: string;
  use_case: string;
  input: string;
  touched: string;
}

/** Which records an entry of the journal touched, for the history of one record. */
export interface JournalTouchedRow {
  record_id: string;
  at: string;
  journal_id: string;
}

export interface EventRow {
  number: number;
  topic: string;
  record_id: string;
  version: number;
  use_case: string;
  at: string;
}

export interface CredentialRow {
  person_id: string;
  kind: string;
  secret_hash: string;
  expires_at: string | null;
}

export interface DeviceRow {
  id: string;
  name: string;
  secret_hash: string;
  enrolled_at: string;
  revoked_at: string | null;
}

export interface SessionRow {
  id: string;
  person_id: string;
  secret_hash: string;
  via: string;
  device_id: string | null;
  created_at: string;
  expires_at: string;
  revoked_at: string | null;
}

export interface TokenRow {
  id: string;
  name: string;
  person_id: string;
  secret_hash: string;
  scopes: string;
  created_at: string;
  expires_at: string | null;
  revoked_at: string | null;
}

export interface AttemptsRow {
  subject: string;
  failures: number;
  locked_until: string | null;
}

export interface RepeatRow {
  request_id: string;
  use_case: string;
  input_hash: string;
  answer: string;
  at: string;
}

export interface ColumnMappingRow {
  source: string;
  mapping: string;
}

export interface MigrationRow {
  number: number;
  name: string;
  applied_at: string;
}
