import type { ReadingAnswer, WireCover } from '../../../contract/index.js';
import { ALLOYS, wireUnitWeightKgPerM } from '../../../core/materials/index.js';
import { kgFromMg, mFromMm } from '../../../core/stock/index.js';
import type { RecordOf } from '../../api/use-records.js';

export type WireRecord = RecordOf<'wire'>;
export type SpoolRecord = RecordOf<'spool'>;
type Balance = ReadingAnswer<'balances'>['items'][number];

/** A spool and the wire on it by the books. */
export interface SpoolLine {
  readonly spool: SpoolRecord;
  readonly kg: number;
  readonly metres: number;
}

/** A kind of wire and what there is of it. */
export interface WireLine {
  readonly wire: WireRecord;
  /** Those that are not empty, the oldest first: so they are used up. */
  readonly spools: readonly SpoolLine[];
  readonly emptied: readonly SpoolLine[];
  /** On all spools, in quarantine too. */
  readonly kg: number;
  readonly metres: number;
  readonly cover: WireCover | undefined;
}

export interface WireBookParts {
  readonly wires: readonly WireRecord[];
  readonly spools: readonly SpoolRecord[];
  /** Of the accounts of spools. */
  readonly balances: readonly Balance[];
  readonly covers: readonly WireCover[];
}

/** What the shop has of each wire: core first, then wrap, each by alloy and size. */
export function wireBook({ wires, spools, balances, covers }: WireBookParts): readonly WireLine[] {
  const held = new Map(balances.map(({ account, unit, quantity }) => [`${account} ${unit}`, quantity]));
  const lines = spools
    .toSorted((a, b) => (a.body.receivedAt < b.body.receivedAt ? -1 : 1))
    .map((spool) => ({
      spool,
      kg: kgFromMg(held.get(`spool/${spool.id} mg`) ?? 0),
      metres: mFromMm(held.get(`spool/${spool.id} mm`) ?? 0),
    }));
  const coverOf = new Map(covers.map((cover) => [cover.wireId, cover]));
  return wires.toSorted(byUseAndSize).map((wire) => {
    const ofWire = lines.filter(({ spool }) => spool.body.wireId === wire.id);
    const full = ofWire.filter(({ spool }) => spool.state !== 'empty');
    return {
      wire,
      spools: full,
      emptied: ofWire.filter(({ spool }) => spool.state === 'empty'),
      kg: sum(full.map(({ kg }) => kg)),
      metres: sum(full.map(({ metres }) => metres)),
      cover: coverOf.get(wire.id),
    };
  });
}

/** Whether a wire will be used up sooner than is wanted. */
export const isShort = ({ cover }: Pick<WireLine, 'cover'>): boolean =>
  cover?.coverDays !== undefined && cover.coverDays < cover.wantedDays;

/** Weight of a metre of a wire by its size and alloy, kg/m. */
export const unitWeightOf = ({ body }: WireRecord): number =>
  wireUnitWeightKgPerM({ ...body, densityKgPerM3: ALLOYS[body.alloy].densityKgPerM3.value });

const byUseAndSize = (a: WireRecord, b: WireRecord): number =>
  order(a.body.use, b.body.use) ||
  order(a.body.alloy, b.body.alloy) ||
  order(a.body.shape, b.body.shape) ||
  a.body.sizeM - b.body.sizeM;

const order = (a: string, b: string): number => (a === b ? 0 : a < b ? -1 : 1);

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
