export {
  aboutTarget,
  type Capability,
  type CapabilityAsked,
  capability,
  type Ratio,
  type Specification,
} from './capability/capability.js';
export { freeConfidence, readingsForFree } from './capability/free-tolerance.js';
export { type NormalityTest, normalityTest } from './capability/normality.js';
export { overallBase } from './capability/overall-base.js';
export { shareOutside } from './capability/share-outside.js';
export {
  howeFactor,
  oneSidedFactor,
  type ToleranceAsked,
  twoSidedFactor,
} from './capability/tolerance-factors.js';
export { type ChartConstants, chartConstants } from './charts/chart-constants.js';
export {
  type ControlLimits,
  meanLimits,
  outside,
  rangeLimits,
  spreadLimits,
} from './charts/control-limits.js';
export {
  badCountLimits,
  type CountedSample,
  overallRate,
  type ProbabilityLimits,
  probabilityLimits,
  rateLimits,
  shareLimits,
} from './charts/count-limits.js';
export {
  type CusumRule,
  type CusumStep,
  cusumLimitFor,
  cusumPath,
  cusumRunLength,
} from './charts/cusum.js';
export { type EwmaChart, ewmaLimits, ewmaPath, ewmaRunLength, ewmaWidthFor } from './charts/ewma.js';
export { type PhaseOne, phaseOne } from './charts/phase-one.js';
export {
  baseByPooledSpread,
  baseByRange,
  baseBySpread,
  baseOfSingles,
  movingRanges,
  type ProcessBase,
} from './charts/process-base.js';
export { outerWidthFor, rulesRunLength, type ZoneRule } from './charts/rule-chain.js';
export { falseAlarmRate, RULE_SETS, type RuleSet } from './charts/rule-sets.js';
export { drawnRunLength, singlesRunLength } from './charts/run-length.js';
export {
  NELSON_RULES,
  patternBegins,
  patternEnds,
  type RunRule,
  WESTERN_ELECTRIC_RULES,
} from './charts/run-rules.js';
export { type ThreeWay, threeWay } from './charts/three-way.js';
export {
  type ExposureTest,
  exposureTest,
  type Source,
  type SourceFinding,
} from './complaints/exposure-test.js';
export { type TimeCluster, timeCluster } from './complaints/time-cluster.js';
export { betaDistribution } from './distributions/beta.js';
export { binomial } from './distributions/binomial.js';
export { chiSquare, gammaDistribution } from './distributions/chi-square.js';
export type { Continuous } from './distributions/continuous.js';
export type { Counted } from './distributions/counted.js';
export { fRatio } from './distributions/f-ratio.js';
export { type Draw, hypergeometric } from './distributions/hypergeometric.js';
export { type NoncentralT, noncentralTBelow, noncentralTQuantile } from './distributions/noncentral-t.js';
export {
  normalAbove,
  normalBelow,
  normalBetween,
  normalDensity,
  normalQuantile,
} from './distributions/normal.js';
export { normalDraw } from './distributions/normal-draw.js';
export { poisson } from './distributions/poisson.js';
export { studentT } from './distributions/student-t.js';
export {
  type RangeOf,
  studentizedRangeBelow,
  studentizedRangeQuantile,
} from './distributions/studentized-range.js';
export {
  addedCheck,
  type Check,
  type CheckedStrings,
  type ChecksOutcome,
  checksOutcome,
} from './escapes/checks-in-a-row.js';
export {
  lincolnPetersen,
  type MarkedTwice,
  type RecaptureEstimate,
  recaptureEstimate,
} from './escapes/recapture.js';
export {
  type EscapesBetween,
  escapesBetween,
  type RemovalEstimate,
  removalEstimate,
  robsonRegier,
  type TwoChecks,
} from './escapes/removal.js';
export { type SeededCheck, type SeededEstimate, seededEstimate } from './escapes/seeded.js';
export { firstPassYield, rolledYield, type StageCount, yieldOfFaults } from './escapes/yields.js';
export { type AverageRangeStudy, averageRangeStudy } from './gauge/average-range.js';
export { type CrossedAnova, crossedAnova, type Squares } from './gauge/crossed-anova.js';
export { type CrossedStudy, crossedStudy, type StudyReading } from './gauge/crossed-study.js';
export {
  type GaugeAsked,
  type GaugeParts,
  type GaugeStudy,
  type GaugeVerdict,
  gaugeStudy,
} from './gauge/gauge-study.js';
export { type StudyStep, studyOrder } from './gauge/study-order.js';
export type { Interval } from './intervals/interval.js';
export { type RateFound, type RateRatio, rateInterval, rateRatio } from './intervals/rate-interval.js';
export {
  jeffreysInterval,
  type ShareFound,
  shareAtMost,
  shareInterval,
  wilsonInterval,
} from './intervals/share-interval.js';
export { meanOf, spreadOf } from './moments.js';
export { type CostedPlan, cheapestPlan, type PlanCosts } from './sampling/cheapest-plan.js';
export { findPlan, type PlanWanted } from './sampling/find-plan.js';
export {
  type SequentialAnswer,
  type SequentialCourse,
  type SequentialPlan,
  type SequentialWanted,
  sequentialAnswer,
  sequentialCourse,
  sequentialPlan,
} from './sampling/sequential-plan.js';
export {
  acceptance,
  lookedAt,
  outgoing,
  type SampledFrom,
  type SinglePlan,
  worstOutgoing,
} from './sampling/single-plan.js';
export {
  type CodeLetter,
  codeLetter,
  type InspectionLevel,
  normalCell,
  type PlanCell,
  QUALITY_LEVELS,
  type QualityLevel,
  standardPlan,
  tightenedCell,
} from './sampling/standard-plans.js';
export { type Inspection, nextInspection } from './sampling/switching.js';
export type { StatsFault } from './stats-fault.js';
export { allPairs, type PairDifference } from './stories/all-pairs.js';
export { type ChangePoint, changePoint } from './stories/change-point.js';
export { type GroupsTest, type OneWay, oneWay, rankedGroups, welchOneWay } from './stories/many-groups.js';
export { benjaminiHochberg, holm } from './stories/many-questions.js';
export { type ParetoRow, pareto } from './stories/pareto.js';
export { stepBegan } from './stories/step-began.js';
export { type TimedValue, type TrendSlope, type TrendTest, trendSlope, trendTest } from './stories/trend.js';
export {
  type GroupDifference,
  type GroupMoments,
  groupDifference,
  momentsDifference,
  momentsOf,
  momentsWithout,
} from './stories/two-groups.js';
export { predictOnLine, readBack, type StraightLine, straightLine } from './straight-line.js';
