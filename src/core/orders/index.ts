export { type AnswerFigures, answerFigures, type LikedHere, likedHere } from './answer-figures.js';
export {
  type RequestAnswer,
  type RequestAnswerer,
  type RequestFault,
  type RequestQuestion,
  requestAnswerer,
} from './answer-request.js';
export type { Catalogue, NamedTuning, ShopRules } from './catalogue.js';
export {
  type Column,
  type ColumnMap,
  HEADINGS,
  mapColumns,
  type TableRow,
  type ToldColumns,
} from './columns.js';
export {
  type AnswerFault,
  type AnswerQuestion,
  type GivenAnswer,
  giveAnswer,
  keysOf,
} from './give-answer.js';
export { foldName, mostLike } from './likeness.js';
export type { OrderLine, PlayerRequest, ReferenceSet, WantedSet, WantedString, Wishes } from './order.js';
export { readScales } from './read-instrument.js';
export { type ReadOrders, readOrders } from './read-orders.js';
export { readGauges, readMaterial } from './read-strings.js';
export { readWishes, WISH_EXAMPLES } from './read-wishes.js';
export { type Resolver, resolver } from './resolve.js';
export { requestFault, requestWarnings } from './resolve-request.js';
export type {
  OrderFault,
  OrderFaultCode,
  OrderWarning,
  Resolution,
  ResolvedOrder,
  ResolvedString,
} from './resolved.js';
export { underHeading } from './under-heading.js';
