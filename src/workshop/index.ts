export { DEMO_DATE, DEMO_PASSWORD, DEMO_PEOPLE, DEMO_PIN } from '../../demo/index.js';
export type {
  JournalEntry,
  ListQuery,
  Page,
  ReadTransaction,
  Store,
  StoredEvent,
} from '../store/index.js';
export { openStore, type StorePlace } from '../store/index.js';
export type { AccessParts } from './access/access-parts.js';
export { authenticate, type Credentials, type Known, recognise } from './access/authenticate.js';
export { deviceOfKey, deviceView, enrolDeviceCase, peopleWithPin } from './access/devices.js';
export { type ConsoleLink, consoleSignInLink, firstOwner } from './access/first-owner.js';
export { changePassword, setPassword, setPin } from './access/own-secrets.js';
export { openSessions, permissionsIn, type SignedIn } from './access/sessions.js';
export { pinSignIn, signIn, signOut } from './access/sign-in.js';
export { type SlowHash, slowHash } from './access/slow-hash.js';
export { tokenView } from './access/tokens.js';
export { calibrationSeen } from './calibration/calibration-seen.js';
export { recalibrate } from './calibration/recalibrate.js';
export { type Clock, computerClock, type SetBack, type ShopClock, shopClock } from './clock.js';
export { complaintRegister } from './complaints/complaint-register.js';
export { complaintTrace } from './complaints/complaint-trace.js';
export { demoDay, demoFile, demoShop } from './demo.js';
export { causesSeen, type Seen } from './demo-history/causes-seen.js';
export { type DemoSignIn, letDemoPeopleIn } from './demo-history/let-demo-people-in.js';
export { type DemoHistoryWish, loadDemoHistory } from './demo-history.js';
export { beginDialRound } from './dial-rounds/begin-dial-round.js';
export { recordDialReading, strikeDialReading } from './dial-rounds/dial-readings.js';
export { adoptDialRound, dropDialRound, undoDialRound } from './dial-rounds/settle-dial-round.js';
export { dryRoomAir } from './dry-room/dry-room-air.js';
export { importDryRoom } from './dry-room/import-dry-room.js';
export { lotsLyingDuring } from './dry-room/lots-lying-during.js';
export { reportDryRoom } from './dry-room/report-dry-room.js';
export { inputProblems } from './input-problems.js';
export { loadShop } from './load-shop.js';
export { localClock } from './local-clock.js';
export { newId } from './new-id.js';
export { cancelOrder } from './orders/cancel-order.js';
export {
  answerComplaint,
  closeComplaint,
  correctComplaint,
  registerComplaint,
  reopenComplaint,
} from './orders/complaints.js';
export { dayOfShop } from './orders/day-of-shop.js';
export { declineRequest } from './orders/decline-request.js';
export { freezePlan } from './orders/freeze-plan.js';
export { importOrders } from './orders/import-orders.js';
export { openOrders } from './orders/open-orders.js';
export { orderRequest } from './orders/order-request.js';
export { rearrangePlan } from './orders/rearrange-plan.js';
export { receiveRequest } from './orders/receive-request.js';
export { resolveRequest } from './orders/resolve-request.js';
export { runsUnderWay } from './orders/runs-under-way.js';
export { saveOrder } from './orders/save-order.js';
export { stringsInCheck } from './orders/strings-in-check.js';
export { packageRoot } from './package-root.js';
export { openPacks } from './packing/open-packs.js';
export { pickString } from './packing/pick-string.js';
export { sealPack } from './packing/seal-pack.js';
export { shipOrder } from './packing/ship-order.js';
export { unpickString } from './packing/unpick-string.js';
export { voidPack } from './packing/void-pack.js';
export { type AnswerOf, type Ask, type Asked, type Performer, perform, performMany } from './perform.js';
export { abandonRun } from './production/abandon-run.js';
export { acknowledgeCautions } from './production/acknowledge-cautions.js';
export { changeSpool } from './production/change-spool.js';
export { closeRun } from './production/close-run.js';
export { holdLot, releaseLot, scrapLot } from './production/judge-lot.js';
export { pauseRun, resumeRun } from './production/pause-run.js';
export { planRun } from './production/plan-run.js';
export { recordEndChecks } from './production/record-end-checks.js';
export { recordMeasurements } from './production/record-measurements.js';
export { recordTally } from './production/record-tally.js';
export { recordRunSettings } from './production/run-settings.js';
export { saveRecipe } from './production/save-recipe.js';
export { startRun } from './production/start-run.js';
export { stepRecipe } from './production/step-recipe.js';
export { judgeTrialString, recordTrialString } from './production/trial-strings.js';
export { voidMeasurement, voidTally, voidTrialString } from './production/void-entry.js';
export { qualityRunSeen } from './quality/quality-run-seen.js';
export { qualitySeen } from './quality/quality-seen.js';
export { readOrdersFile } from './read-orders-file.js';
export { readTable, type Table } from './read-table.js';
export { USE_CASES, useCaseNamed } from './registry.js';
export { setUpsSeen } from './set-ups/set-ups-seen.js';
export { enterLot } from './shop/enter-lot.js';
export {
  saveBin,
  saveInstrument,
  saveMachine,
  saveSet,
  saveSettings,
  saveTuning,
  saveWire,
} from './shop/save-shop-records.js';
export { shopBook, shopView } from './shop/shop-book.js';
export { type Step, shopRecords } from './shop/take-in-shop.js';
export { countStrings } from './stock/count-strings.js';
export { moveStrings } from './stock/move-strings.js';
export { freeSpool, quarantineSpool } from './stock/quarantine-spool.js';
export { receiveSpool } from './stock/receive-spool.js';
export { recordDryRoom } from './stock/record-dry-room.js';
export { scrapStrings } from './stock/scrap-strings.js';
export { weighSpool } from './stock/weigh-spool.js';
export { thrownFault } from './store-trouble.js';
export { exportShop, importShop } from './transfer/archive.js';
export { backupShop, dropOldBackups, restoreShop } from './transfer/backup.js';
export { checkShop } from './transfer/check-shop.js';
export { exportRecords } from './transfer/export-records.js';
export { USUAL_KEEP } from './transfer/keep-rule.js';
export { scheduleBackups } from './transfer/scheduled-backups.js';
export type { Actor, AnyUseCase, UseCase, Work, WorkshopFault } from './use-case.js';
export { useCase } from './use-case.js';
export { cardOfRequest, type RequestToPrint } from './views/card-of-request.js';
export { type LabelsSeen, labelOfPack, labelsOfOrder } from './views/labels-seen.js';
export { myCautions } from './views/my-cautions.js';
export { needsSeen } from './views/needs.js';
export { packingSeen } from './views/packing-seen.js';
export { pastDialIns } from './views/past-dial-ins.js';
export { planSeen } from './views/plan-seen.js';
export { search } from './views/search.js';
export { shopNow } from './views/shop-now.js';
export { daySeen, shopSeen } from './views/shop-seen.js';
export { stringsLying } from './views/strings-lying.js';
export { voidedEntries } from './views/voided-entries.js';
export { wireCovers } from './views/wire-needs.js';
export { machineWearSeen } from './wear/machine-wear-seen.js';
