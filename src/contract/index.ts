export {
  type Answered,
  type Client,
  type ClientParts,
  createClient,
  type InputNamed,
  type ListPage,
  type ListValues,
  type OutputNamed,
  type UseCaseName,
} from './client.js';
export { pageAnswer, wholeAnswer } from './http/answers.js';
export type { CalibrationView } from './http/calibration.js';
export type { ComplaintRegister, ComplaintTrace } from './http/complaints.js';
export type { DryRoomAir } from './http/dry-room.js';
export type { MachineWearView } from './http/machine-wear.js';
export type { Need, WireCover } from './http/needs.js';
export { foreignAnswer, isProblem, noAnswer } from './http/no-answer.js';
export { PAPERS, type PaperName } from './http/papers.js';
export type { OrderInPlan, PlanView, SettledPlan } from './http/plan-view.js';
export { type ProblemDetails, problemDetails } from './http/problem-details.js';
export type { QualityQuery, QualityRunView, QualityView } from './http/quality.js';
export { recordQuery, USUAL_PAGE } from './http/queries.js';
export {
  READINGS,
  type ReadingAnswer,
  type ReadingDefinition,
  type ReadingName,
  type ReadingQuery,
} from './http/readings.js';
export type { DayView, Ids, LyingStrings, ShopView } from './http/views.js';
export {
  ALLOWED,
  PERMISSIONS,
  type Permission,
  permissionsOf,
  ROLES,
  type Role,
  TOKEN_SCOPES,
} from './permissions.js';
export { BODIES, id, instant, LENGTH_UNITS, PULL_UNITS, type Sight } from './records/bodies.js';
export {
  type BodyOf,
  bodySchema,
  RECORD_KINDS,
  type RecordKind,
  type RecordKindDefinition,
  type StoredRecord,
} from './records/record-kinds.js';
export { recordSchema as recordOf } from './records/record-schema.js';
export { DaySchema, ORDER_FAULT_CODES } from './schemas/day.js';
export { hasSecrets, LEFT_OUT, secretText, withoutSecrets } from './schemas/secret.js';
export { ShopSchema } from './schemas/shop.js';
export { defineUseCase, type InputOf, type OutputOf, type UseCaseDefinition } from './use-case.js';
export {
  ACCESS_SCHEMAS,
  changePerson,
  enrolDevice,
  invitePerson,
  LEAST_PASSWORD,
  makeSignInLink,
  makeToken,
  revokeDevice,
  revokeSession,
  revokeSessions,
  revokeToken,
  saveSight,
} from './use-cases/access.js';
export { recalibrate } from './use-cases/calibration.js';
export { DEFINITIONS, type Definitions } from './use-cases/definitions.js';
export * from './use-cases/dial-rounds.js';
export {
  CLIMATE_COLUMNS,
  type ClimateColumn,
  importDryRoom,
  reportDryRoom,
} from './use-cases/dry-room.js';
export * from './use-cases/orders.js';
export * from './use-cases/packing.js';
export {
  abandonRun,
  acknowledgeCautions,
  changeSpool,
  closeRun,
  holdLot,
  judgeTrialString,
  pauseRun,
  planRun,
  recordEndChecks,
  recordMeasurements,
  recordRunSettings,
  recordTally,
  recordTrialString,
  releaseLot,
  resumeRun,
  saveRecipe,
  scrapLot,
  startRun,
  stepRecipe,
  voidMeasurement,
  voidTally,
  voidTrialString,
} from './use-cases/production.js';
export * from './use-cases/shop.js';
export {
  countStrings,
  freeSpool,
  moveStrings,
  quarantineSpool,
  receiveSpool,
  recordDryRoom,
  scrapStrings,
  weighSpool,
} from './use-cases/stock.js';
export { counted, lengthInBoth, metres, sizeInBoth, speedInBoth, weight } from './words/amounts.js';
export { type ArchiveFault, archiveFaultWords, type RestoreFault } from './words/archive-faults.js';
export { type CautionWords, cautionInWords, looseTailInWords } from './words/cautions.js';
export { complaintFaultInWords } from './words/complaints.js';
export { type DialInWords, dialInInWords, pitchAdviceInWords } from './words/dial-in.js';
export {
  cutInWords,
  impossibleInWords,
  jointInWords,
  lengthWantedInWords,
  pullInWords,
  pullOutcomeInWords,
  tailInWords,
  toPullInWords,
  twistsInWords,
  twistsWhyInWords,
  whipInWords,
} from './words/ends.js';
export {
  type FileFault,
  fileFaultWords,
  type OrdersFileFault,
  type ShopFault,
  type TableFault,
} from './words/file-faults.js';
export { HTTP_FAULTS } from './words/http-faults.js';
export { lateInWords } from './words/late.js';
export { countInWords, listInWords } from './words/lists.js';
export { type FaultWords, orderFaultLine, orderFaultWords } from './words/order-faults.js';
export { placementInWords } from './words/placement.js';
export {
  type CardString,
  cardGauge,
  feelInWords,
  type PlayerCard,
  playerCard,
  tuningInWords,
} from './words/player-card.js';
export { meritInWords, recipeFaultWords } from './words/recipe-faults.js';
export { forceInWords, leanedOnInWords, setPointInWords, speedLimitInWords } from './words/set-points.js';
export { firstOffInWords, protocolInWords, whirlInWords } from './words/set-up-checks.js';
export {
  endInWords,
  gaugesInWords,
  materialInWords,
  type StringWords,
  stringKeyInWords,
  wholeStringInWords,
} from './words/strings.js';
export { clockInWords, dateInWords, daysInWords, durationInWords } from './words/times.js';
export { unableInWords } from './words/unable.js';
export { unmadeInWords } from './words/unmade.js';
export { warningInWords } from './words/warnings.js';
export { WORKSHOP_FAULTS, workshopFaultWords } from './words/workshop-faults.js';
