/** The rules that `judge` applies, in the order in which their findings come. */
import { arborNearLimit } from './arbor/arbor-near-limit.ts';
import { arborOverLimit } from './arbor/arbor-over-limit.ts';
import { betterMix } from './balance/better-mix.ts';
import { hiddenByFriction } from './balance/hidden-by-friction.ts';
import { noMixWithinLock } from './balance/no-mix-within-lock.ts';
import { pastLockAfterRelease } from './balance/past-lock-after-release.ts';
import { pastLockAtTrim } from './balance/past-lock-at-trim.ts';
import { pastLockAtWorst } from './balance/past-lock-at-worst.ts';
import { pastLockBelowLiftOff } from './balance/past-lock-below-lift-off.ts';
import { pastLockElsewhere } from './balance/past-lock-elsewhere.ts';
import { pullTestDiffers } from './balance/pull-test-differs.ts';
import { runsAway } from './balance/runs-away.ts';
import { singlePurchaseCount } from './balance/single-purchase-count.ts';
import { bending } from './batten/bending.ts';
import { jointsUnknown, wallUnsaid } from './batten/pipe-doubts.ts';
import { sagging } from './batten/sag.ts';
import { tipsOver } from './batten/tips-over.ts';
import { lookAlike } from './bricks/look-alike.ts';
import { moreThanOwned } from './bricks/more-than-owned.ts';
import { unweighedKind } from './bricks/unweighed-kind.ts';
import { bayLoad, bayMoving } from './building/bay-load.ts';
import { floorLoad } from './building/floor-load.ts';
import { linesOnNoWell, wellLoad } from './building/well-load.ts';
import { carriesPerson } from './hang/carries-person.ts';
import { coupledAlone } from './hang/coupled-alone.ts';
import { deckToLay } from './hang/deck-to-lay.ts';
import { heldBySteel } from './hang/held-by-steel.ts';
import { loomOnDeck } from './hang/loom-on-deck.ts';
import { loomTooShort } from './hang/loom-too-short.ts';
import { takesNoBricks } from './hang/takes-no-bricks.ts';
import { blockLoad } from './lines/block-load.ts';
import { designFactor } from './lines/design-factor.ts';
import { fleetAngle } from './lines/fleet-angle.ts';
import { heldDown } from './lines/held-down.ts';
import { clippedEnds } from './lines/line-ends.ts';
import { lineTension } from './lines/line-tension.ts';
import { lengthMatters, linesTakenTrue } from './lines/lines-taken-true.ts';
import { overhangSlack } from './lines/overhang.ts';
import { sheaveSize } from './lines/sheave-size.ts';
import { slackLine } from './lines/slack-line.ts';
import { equalShareTooMuch } from './load/equal-share.ts';
import { nearLiveLimit } from './load/near-live-limit.ts';
import { overLiveLimit } from './load/over-live-limit.ts';
import { perLengthLimit, pointLimit } from './load/placed-loads.ts';
import { stopRating } from './load/stop-rating.ts';
import { lockBelowLimit, lockFailed, locksUntested, lockTestsDue } from './lock/lock-tests.ts';
import { houseOutsideBand, itemOutsideBand } from './plausible/outside-band.ts';
import {
  poundForKilogram,
  pulledInPounds,
  releaseInPounds,
} from './plausible/pound-for-kilogram.ts';
import { lockedOut } from './record/locked-out.ts';
import { pastWhatHolds } from './record/past-what-holds.ts';
import { recordStale } from './record/record-stale.ts';
import { stackDiffers } from './record/stack-differs.ts';
import { noRecord, stateUnknown } from './record/state-unknown.ts';
import type { AmongRule, HouseRule, SetRule } from './rule.ts';
import { outOfReach } from './stack/out-of-reach.ts';
import { spreadersNotListed } from './stack/spreaders-not-listed.ts';
import { stackNearRod } from './stack/stack-near-rod.ts';
import { stackOverRod } from './stack/stack-over-rod.ts';
import { roomAboveArbor } from './travel/room-above.ts';
import { roomBelowArbor } from './travel/room-below.ts';
import { stopOrder } from './travel/stop-order.ts';
import { trimOutsideTravel } from './travel/trim-outside-travel.ts';
import { plantUnknown } from './unknown/plant-unknown.ts';

export const HOUSE_RULES: readonly HouseRule[] = [
  noRecord,
  moreThanOwned,
  lookAlike,
  unweighedKind,
  houseOutsideBand,
  poundForKilogram,
  bayLoad,
  bayMoving,
  wellLoad,
  floorLoad,
  clippedEnds,
  sheaveSize,
  fleetAngle,
  wallUnsaid,
  jointsUnknown,
  linesTakenTrue,
  linesOnNoWell,
  locksUntested,
  lockTestsDue,
  plantUnknown,
];

/** What ends everything comes first, then what is on the set now. */
export const STANDING_RULES: readonly SetRule[] = [
  carriesPerson,
  lockedOut,
  lockFailed,
  pastWhatHolds,
  stackDiffers,
  recordStale,
  stateUnknown,
  takesNoBricks,
  heldBySteel,
];

/** These look at what hangs on other sets too. */
export const AMONG_RULES: readonly AmongRule[] = [coupledAlone, deckToLay];

/** The plan of one set, and its own plant. */
export const PLAN_RULES: readonly SetRule[] = [
  roomAboveArbor,
  roomBelowArbor,
  stopOrder,
  trimOutsideTravel,
  stackOverRod,
  stackNearRod,
  outOfReach,
  spreadersNotListed,
  arborOverLimit,
  arborNearLimit,
  overLiveLimit,
  nearLiveLimit,
  pointLimit,
  perLengthLimit,
  equalShareTooMuch,
  tipsOver,
  lineTension,
  designFactor,
  heldDown,
  blockLoad,
  bending,
  overhangSlack,
  slackLine,
  sagging,
  lengthMatters,
  stopRating,
  lockBelowLimit,
  pastLockAtTrim,
  pastLockElsewhere,
  pastLockBelowLiftOff,
  pastLockAtWorst,
  pastLockAfterRelease,
  noMixWithinLock,
  betterMix,
  runsAway,
  hiddenByFriction,
  singlePurchaseCount,
  pullTestDiffers,
  loomTooShort,
  loomOnDeck,
  itemOutsideBand,
  releaseInPounds,
  pulledInPounds,
];
