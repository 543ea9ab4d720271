/**
 * The two signs beneath a column of the wall and the word that overrules its name, from the record
 * alone. Restraints have a direction and never add up; what is not known is the sign `unknown`.
 */

import type { SetAssessment } from '#assessment';
import { type House, lockHoldOf } from '#house';
import { isStale } from '#state';
import { phrase } from '#texts';
import type { GlyphName } from './glyphs.ts';
import { tradeWord } from './trade-words.ts';

export type WallSigns = {
  /** Null for a set without an arbor: a motor has no balance to show. */
  readonly balance: GlyphName | null;
  readonly hold: GlyphName | null;
  /** `LOCKED OUT, tag 7`, `STALE, 26 h`, `dead-hung`; null where the name stands alone. */
  readonly word: string | null;
};

const NEAR_STOP_M = 0.01;
const SECONDS_AN_HOUR = 3600;

type Span = { readonly low: number; readonly high: number };

const isAtOneHeight = ({ state }: SetAssessment['recorded']): boolean =>
  state.height !== null && state.height.low === state.height.high;

/**
 * What has to be held. At one height an interval is a contact, in which the piece finds its own
 * balance: it comes to rest at the value nearest to none. Where the height is in doubt, every
 * value has to be held.
 */
const spanToHold = (set: SetAssessment, { low, high }: Span): Span => {
  if (!isAtOneHeight(set.recorded)) return { low, high };
  const settled = low > 0 ? low : Math.min(high, 0);
  return { low: settled, high: settled };
};

const balanceSign = ({ recorded }: SetAssessment): GlyphName => {
  const { imbalance, pull, state } = recorded;
  if (state.knowledge.basis === 'pullTested' && pull?.known === true) {
    const { imbalance: measured, friction } = pull.value;
    if (Math.abs(measured) <= friction) return 'inBalance';
  }
  if (!imbalance.known) return 'unknown';
  const { low, high } = imbalance.value;
  if (low > 0) return 'battenHeavy';
  if (high < 0) return 'arborHeavy';
  return isAtOneHeight(recorded) ? 'resting' : 'unknown';
};

/** Whether the stop on which the set stands is rated for what leans on it; null: not known. */
const heldByStop = ({ lineSet, recorded }: SetAssessment, { low, high }: Span): boolean | null => {
  const { height } = recorded.state;
  if (height === null) return null;
  const standsOn = (stop: typeof lineSet.lowStop, heightM: number): boolean =>
    stop.height.known && Math.abs(stop.height.value - heightM) <= NEAR_STOP_M;
  if (standsOn(lineSet.lowStop, height.high) && low >= 0) {
    const { rated } = lineSet.lowStop;
    return rated.known ? rated.value >= high : null;
  }
  if (standsOn(lineSet.highStop, height.low) && high <= 0) {
    const { rated } = lineSet.highStop;
    return rated.known ? rated.value >= -low : null;
  }
  return false;
};

const heldByLock = ({ recorded, lineSet }: SetAssessment, house: House, { low, high }: Span) => {
  const { lock } = recorded.state;
  const hold = lockHoldOf(lineSet, house.rules);
  if (lock === 'open') return false;
  if (lock === null || !hold.known) return null;
  return Math.max(Math.abs(low), Math.abs(high)) <= hold.value;
};

/** One restraint that alone resists each way the set could go, within its reach. */
const heldByRestraint = ({ recorded }: SetAssessment, { low, high }: Span): boolean | null => {
  const { restraints, height } = recorded.state;
  if (restraints === null) return null;
  const resists = (way: 'in' | 'out', sizeN: number): boolean =>
    sizeN <= 0 ||
    restraints.some(
      (each) =>
        (each.resists === way || each.resists === 'both') &&
        each.rating !== null &&
        each.rating >= sizeN &&
        height !== null &&
        (each.from === null || height.low >= each.from) &&
        (each.to === null || height.high <= each.to),
    );
  if (restraints.length === 0) return false;
  return resists('in', high) && resists('out', -low);
};

const holdSign = (set: SetAssessment, house: House): GlyphName => {
  const { imbalance } = set.recorded;
  if (!imbalance.known) return 'unknown';
  const span = spanToHold(set, imbalance.value);
  const stop = heldByStop(set, span);
  if (stop === true) return 'stop';
  const lock = heldByLock(set, house, span);
  if (lock === true) return 'lock';
  const restraint = heldByRestraint(set, span);
  if (restraint === true) return 'bullLine';
  return [stop, lock, restraint].includes(null) ? 'unknown' : 'danger';
};

const ageHours = (at: string | null, nowMs: number): number | null => {
  const recordedMs = at === null ? Number.NaN : Date.parse(at);
  return Number.isNaN(recordedMs)
    ? null
    : Math.floor((nowMs - recordedMs) / 1000 / SECONDS_AN_HOUR);
};

const staleWord = (set: SetAssessment, house: House, nowMs: number | null): string | null => {
  const { staleAfterSeconds } = house.rules;
  const { knowledge } = set.recorded.state;
  if (nowMs === null || !staleAfterSeconds.known || knowledge.basis === 'unknown') return null;
  const hours = ageHours(knowledge.at, nowMs);
  const recordedAtMs = knowledge.at === null ? null : Date.parse(knowledge.at);
  const stale = isStale({
    recordedAtMs: Number.isNaN(recordedAtMs) ? null : recordedAtMs,
    nowMs,
    staleAfterSeconds: staleAfterSeconds.value,
  });
  if (!stale) return null;
  return hours === null
    ? phrase(house, 'STALE, no time')
    : phrase(house, 'STALE, {hours} h', { hours });
};

/** From the record alone; `nowMs` decides what is stale, null leaves age out. */
export const wallSigns = (set: SetAssessment, house: House, nowMs: number | null): WallSigns => {
  const { service, tag, knowledge } = set.recorded.state;
  if (service === 'lockedOut') {
    const word =
      tag === null
        ? phrase(house, 'LOCKED OUT')
        : phrase(house, 'LOCKED OUT, tag {number}', { number: tag.number });
    return { balance: 'lockedOut', hold: 'lockedOut', word };
  }
  if (service === 'deadHung') {
    return { balance: null, hold: 'deadHung', word: tradeWord(house, 'deadHung') };
  }
  if (set.lineSet.arbor === null) return { balance: null, hold: null, word: null };
  if (knowledge.basis === 'unknown') {
    return { balance: 'unknown', hold: 'unknown', word: null };
  }
  const stale = staleWord(set, house, nowMs);
  return {
    balance: stale === null ? balanceSign(set) : 'stale',
    hold: holdSign(set, house),
    word: stale,
  };
};
