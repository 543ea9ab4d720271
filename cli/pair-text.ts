/** An order for two coupled sets, as a crew does it, or why there is none. */

import type { House } from '#house';
import type { StepBetween, WorkedPair } from '#orders';
import { unreachable } from '#outcome';
import type { Breach, OrderVerdict } from '#rules';
import type { PairNone } from '#sequence';
import {
  inHouseWords,
  type OrderWords,
  sayAssumption,
  sayBearing,
  sayForce,
  sayStep,
} from '#sheets';
import type { PairStep } from '#state';
import { breachWords, heightWords, namesIn, placeOf } from './order-text.ts';

type SideName = 'first' | 'second';
const SIDES: readonly SideName[] = ['first', 'second'];

export const pairText = (worked: WorkedPair): readonly string[] => {
  const { question, plan, verdict } = worked;
  const { house } = question.first.job;
  const names = SIDES.map((side) => {
    const { lineSet, hang } = question[side].job.set;
    return `Set ${lineSet.id}${hang === null ? '' : `, ${hang.name}`}`;
  });
  const assumed = SIDES.flatMap((side) => question[side].start.assumed);
  return [
    ...(house.demo ? ['DEMO: an invented house and show'] : []),
    `${names.join(' and ')}: coupled, one order for both`,
    ...assumed.map((each) =>
      each.is === 'massesAsWritten'
        ? sayAssumption(each, house)
        : `Assumed: ${sayAssumption(each, house)}`,
    ),
    '',
    ...('found' in plan ? stepsText(worked) : noneText(worked)),
    ...verdictText(worked),
    ...(verdict.broken === null && 'found' in plan
      ? []
      : ['NOT TO BE USED: there is no order here that the judge accepts. Stop and ask.']),
  ];
};

/** Which own step of a set each step of the pair is: zones and common flights are of both. */
const ownStep = (step: PairStep, set: string): boolean => {
  if ('together' in step) return step.together.some((move) => move.set === set);
  return step.set === set || step.step.act === 'close' || step.step.act === 'reopen';
};

const betweenOf = (
  verdict: OrderVerdict,
  step: StepBetween['step'],
  { own, number }: { readonly own: number; readonly number: number },
): StepBetween | null => {
  const [before, after] = [verdict.states[own], verdict.states[own + 1]];
  if (before === undefined || after === undefined) return null;
  return { step, number, before, after, proofs: [] };
};

const stepsText = ({ question, steps, verdict }: WorkedPair): readonly string[] => {
  const done = { first: 0, second: 0 };
  return steps.flatMap((step, index) => {
    const number = index + 1;
    const lines = SIDES.flatMap((side): readonly string[] => {
      const { job } = question[side];
      const set = job.set.lineSet.id;
      if (!ownStep(step, set)) return [];
      const own = done[side];
      done[side] += 1;
      const move = 'together' in step ? step.together.find((each) => each.set === set) : undefined;
      const act = 'together' in step ? move && { act: 'fly' as const, to: move.to } : step.step;
      // A zone is said once, by the set that it is written to.
      if (act === undefined || (!('together' in step) && step.set !== set)) return [];
      const between = betweenOf(verdict.sets[side], act, { own, number });
      if (between === null) return [];
      const words: OrderWords = {
        house: job.house,
        physics: job.physics,
        nameOf: namesIn(job.set),
        isDoubtTried: question.doubt === 'worst',
        areFaultsTried: question.lock === 'planning',
      };
      const said = sayStep(between, words);
      return [
        `    Set ${set}. ${said.who}: ${said.does}`,
        `        Then: ${said.expect.join(' ')}`,
        `        Stop if ${said.stopIf}. To give it up: ${said.abandon}`,
      ];
    });
    const head =
      'together' in step
        ? 'BOTH TOGETHER, on one word; who loses the other calls STOP'
        : inHouseWords(TITLES[step.step.act], question.first.job.house);
    return [`${String(number).padStart(2)}  ${head}`, ...lines];
  });
};

const TITLES: Readonly<Record<StepBetween['step']['act'], string>> = {
  attach: 'At the batten',
  takeUp: 'At the batten',
  rest: 'At the batten',
  release: 'At the batten',
  add: 'Bricks',
  remove: 'Bricks',
  fly: 'One set by itself: nothing shared is on both',
  rig: 'Restraint',
  unrig: 'Restraint',
  hangOnSteel: 'Steel',
  takeOffSteel: 'Steel',
  close: 'Zone',
  reopen: 'Zone',
  ease: 'A pull on the stop',
};

const noneText = ({ question, plan }: WorkedPair): readonly string[] => {
  const { house } = question.first.job;
  if ('stopped' in plan) return [`None found in ${plan.stopped.searched} states: stop and ask.`];
  if (!('none' in plan)) return [];
  return [
    'No order for the pair was found; that none exists is not claimed.',
    inHouseWords(whyWords(plan.none, house), house),
  ];
};

const whyWords = (none: PairNone, house: House): string => {
  switch (none.why) {
    case 'asked':
      return none.what === 'band'
        ? 'The band has its least above its most.'
        : 'The shared piece is wanted on one of the two sets only.';
    case 'alone':
      return (
        `Set ${none.set} has no order by itself` +
        (none.none.byN === null ? '' : `, short by ${sayForce(none.none.byN, house, 'up')}`) +
        '.'
      );
    case 'band':
      return (
        `With the piece on both, the battens would be out of the band at ${AT[none.at]}: ` +
        `${heightWords(none.first, { house })} and ${heightWords(none.second, { house })}.`
      );
    case 'unmatched':
      return (
        'The two orders could not be matched from the battens at ' +
        `${heightWords(none.first, { house })} and ${heightWords(none.second, { house })} on.`
      );
    default:
      return unreachable(none);
  }
};

const AT = {
  start: 'the start',
  hands: 'the place where it goes on or comes off',
  goal: 'the end',
};

const verdictText = (worked: WorkedPair): readonly string[] => {
  const { question, steps, verdict } = worked;
  const { house } = question.first.job;
  const said = (breach: Breach): string => {
    const side = SIDES.find((each) => question[each].job.set.lineSet.id === breach.finding.at.set);
    const { physics, set } = question[side ?? 'first'].job;
    return breachWords(breach, { house, physics, set });
  };
  const { broken, alsoBroken, cautions, assumed, oneStops, proofsDue } = verdict;
  return [
    '',
    ...(broken === null ? [] : [`BROKEN ${said(broken)}`]),
    ...alsoBroken.map((each) => `Also broken ${said(each)}`),
    ...(broken === null && steps.length > 0
      ? [`No rule of the order of work is broken by ${steps.length} steps.`]
      : []),
    ...cautions.map((each) => `Caution ${said(each)}`),
    ...SIDES.flatMap((side) => {
      const bearing = worked.bearing[side];
      const set = question[side].job.set.lineSet.id;
      return bearing === null ? [] : [`Set ${set}: ${sayBearing(bearing, house)}`];
    }),
    ...oneStops.map(({ step, set, all, nothing, lag }) =>
      inHouseWords(
        `If one stops ${placeOf(step)} and the other goes on: set ${set} with all of the piece ` +
          `${sayForce(Math.abs(all.imbalance), house, 'up')} at ` +
          `${heightWords(all.at, { house })}, ` +
          `with nothing of it ${sayForce(Math.abs(nothing.imbalance), house, 'up')}. It may lag ` +
          `${heightWords(lag, { house })}.`,
        house,
      ),
    ),
    ...assumed.map((line) => `Assumed: ${inHouseWords(line, house)}.`),
    ...proofsDue.map(
      ({ step, proof }) => `Still to be proved ${placeOf(step)}: ${inHouseWords(proof, house)}.`,
    ),
    'On paper only. Who leads the work decides on the day, and stops it when anything is not so.',
  ];
};
