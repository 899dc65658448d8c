/** Where a figure, a formula or a rule was taken from. */
export interface Source {
  /** Authors of a paper or book, or the body that publishes a standard. */
  readonly by: string;
  /** Left out where what was read bears no date. */
  readonly year?: number;
  readonly title: string;
  /** What was in front of the reader: the work itself, an abstract, another's reproduction, or nothing. */
  readonly read: string;
  readonly note?: string;
  readonly shelf: Shelf;
}

/** The part of the list that a source stands in. */
export type Shelf =
  | 'wire standards'
  | 'figures of materials'
  | 'physics of strings'
  | 'pitch and units'
  | 'numbers and uncertainty'
  | 'quality'
  | 'winding'
  | 'planning'
  | 'orders and documents'
  | 'safety'
  | 'no source';
