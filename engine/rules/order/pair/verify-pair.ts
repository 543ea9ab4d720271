/** The judge of an order of work on two coupled sets. */

import { assert } from '#outcome';
import type { PairStep } from '#state';
import { ruleOf } from '../../declared.ts';
import type { Breach, OrderOptions, ProofDue } from '../verdict.ts';
import { bandBreaches } from './band.ts';
import { atGalleries, QUIET_GALLERIES } from './galleries.ts';
import { aloneBreaches, halfHeldBreaches, otherWorkBreaches } from './half-on.ts';
import { letGo } from './let-go.ts';
import { coupledIn, type Moment } from './moment.ts';
import { oneStops } from './one-stops.ts';
import { type OneStops, type PairToJudge, type PairVerdict, SIDES } from './pair-verdict.ts';
import { bothBefore, pairStepOf, type Replay, replayed, strangeStep } from './replay.ts';

/**
 * Replays an order on two coupled sets: each set by the judge of one set, and what only the two
 * together show. It searches for nothing, and shares no code with what found the order.
 *
 * Source  the-job.md V6, V9, R10; trap 22 of 10.7 for the number of the fault
 * Holds   both battens of a common flight are at the same share of their ways at every moment
 * Omits   shares that change with the tilt: the band is where they are what the lists say; what
 *         the piece itself and its pick points bear when it hangs on one set
 */
export const verifyPair = (
  pair: PairToJudge,
  steps: readonly PairStep[],
  options: OrderOptions,
): PairVerdict => {
  const { leastM, mostM } = pair.band;
  assert(leastM <= mostM, `a band has a least and a most, not ${leastM} and ${mostM}`);
  const replay = replayed(pair, steps, options);
  const own = ofBoth({ pair, steps, replay, options });
  const alone = SIDES.flatMap((side) => {
    const { broken, alsoBroken, cautions } = replay.verdicts[side];
    const all = [...(broken === null ? [] : [broken]), ...alsoBroken, ...cautions];
    return all.map((each) => ({ ...each, step: pairStepOf(replay.own[side], each.step) }));
  });
  const breaches = [...alone, ...own.breaches].toSorted((one, other) => one.step - other.step);
  const isCaution = ({ rule }: Breach): boolean => ruleOf(rule)?.levels[0] === 'caution';
  const stops = breaches.filter((each) => !isCaution(each));
  return {
    sets: replay.verdicts,
    broken: stops[0] ?? null,
    alsoBroken: stops.slice(1),
    cautions: breaches.filter(isCaution),
    refused: refusedOf(pair, steps, replay),
    assumed: [
      ...new Set([...SIDES.flatMap((side) => replay.verdicts[side].assumed), ...own.assumed]),
    ],
    oneStops: own.numbers,
    proofsDue: proofsOf(replay),
  };
};

const refusedOf = (
  pair: PairToJudge,
  steps: readonly PairStep[],
  replay: Replay,
): PairVerdict['refused'] => {
  const ends = SIDES.flatMap((side) => {
    const { refused } = replay.verdicts[side];
    if (refused === null) return [];
    return [{ step: pairStepOf(replay.own[side], refused.step), refusal: refused.refusal }];
  });
  const strange = steps.flatMap((step, index) => {
    const found = strangeStep(pair, step, index);
    return found === null ? [] : [{ step: index, refusal: found.refusal }];
  });
  const [first] = [...ends, ...strange].toSorted((one, other) => one.step - other.step);
  return first ?? null;
};

/** What is to be seen once is said once, though it is of both. */
const proofsOf = ({ verdicts, own }: Replay): readonly ProofDue[] => {
  const all = SIDES.flatMap((side) =>
    verdicts[side].proofsDue.map((due) => ({ ...due, step: pairStepOf(own[side], due.step) })),
  ).toSorted((one, other) => one.step - other.step);
  return all.filter(
    ({ step, proof }, index) =>
      all.findIndex((each) => each.step === step && each.proof === proof) === index,
  );
};

type Judged = {
  readonly breaches: readonly Breach[];
  readonly numbers: readonly OneStops[];
  readonly assumed: readonly string[];
};

const SHARES =
  'anywhere in the band each set carries the share of a piece on both that is listed for it';
const ON_ONE_WORD =
  'both battens keep pace on one word: the closed zone is empty, for if one stops and the other ' +
  'goes on, one of them has all of the piece';

const LET_GO =
  'the closed zone is empty, for if a piece is let go on one set the other has all of it';

type Case = {
  readonly pair: PairToJudge;
  readonly steps: readonly PairStep[];
  readonly replay: Replay;
  readonly options: OrderOptions;
};

/** What only the two together show, moment by moment. */
const ofBoth = ({ pair, steps, replay, options }: Case): Judged => {
  const breaches: Breach[] = [];
  const numbers: OneStops[] = [];
  const assumed: string[] = [];
  let galleries = QUIET_GALLERIES;
  for (let index = -1; index < replay.replayed; index += 1) {
    const [before, after] = [bothBefore(replay, Math.max(0, index)), bothBefore(replay, index + 1)];
    if (before === null || after === null) break;
    const step = steps[index] ?? null;
    const moment: Moment = { pair, options, index, step, before, after };
    const fault = oneStops(moment);
    const slip = letGo(moment);
    const bricks = atGalleries(moment, galleries);
    galleries = bricks.galleries;
    breaches.push(
      ...aloneBreaches(moment),
      ...otherWorkBreaches(moment),
      ...bandBreaches(moment),
      ...halfHeldBreaches(moment),
      ...bricks.breaches,
      ...fault.breaches,
      ...slip.breaches,
    );
    numbers.push(...fault.numbers);
    if (coupledIn(pair, after).onBoth.length > 0) assumed.push(SHARES);
    if (fault.leansOnZone) assumed.push(ON_ONE_WORD);
    if (slip.leansOnZone) assumed.push(LET_GO);
  }
  return { breaches, numbers, assumed };
};
