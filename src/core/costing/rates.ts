/** What the shop pays beside wire. Money in minor units (cents) of its currency. */
export interface CostRates {
  /** ISO 4217 code, and how many minor units make one of it, as a power of ten. */
  readonly currency: string;
  readonly minorDigits: number;
  readonly labourMinorPerHour: number;
  /** Overhead as a share of labour. */
  readonly overheadShare: number;
  readonly endMinorEach: { readonly ball: number; readonly loop: number };
  readonly packMinorPerSet: number;
  readonly packMinutesPerSet: number;
  /** Strings scrapped in the run itself, as a share of good ones; dialling in comes on top. */
  readonly runScrapShare: number;
}
