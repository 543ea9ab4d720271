/**
 * The same engine that the sheets come from, run in the browser: documents in, assessment and
 * findings out. A set whose documents did not change keeps its old value, so that a screen with
 * 120 rows draws one row again and not 120.
 */
import { type Assessment, assess, assessorOf, type SetAssessment } from '#assessment';
import type { Finding } from '#findings';
import type { House, LineSet } from '#house';
import type { Refusal } from '#outcome';
import { type JudgeMemory, judge, judgeSet, momentToJudge } from '#rules';
import type { Show } from '#show';
import type { HouseState } from '#state';
import { writtenHang } from '../editing/show-edits.ts';
import { at, type Json, type JsonObject } from '../keeping/json.ts';
import { readHouseOnce, readShowOnce, readStateOnce } from './read-once.ts';

export type Documents = {
  readonly house: JsonObject;
  readonly show: JsonObject;
  /** Null where nobody has recorded anything: every set is unknown then. */
  readonly state: JsonObject | null;
};

export type SetReckoning = {
  readonly id: string;
  readonly set: SetAssessment;
  /** The hang as it was written; null where the set is empty. */
  readonly written: JsonObject | null;
  readonly findings: readonly Finding[];
  readonly keptEmpty: string | null;
};

export type Reckoning = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState | null;
  readonly documents: Documents;
  readonly assessment: Assessment;
  readonly findings: readonly Finding[];
  /** Findings that name no set. */
  readonly ofHouse: readonly Finding[];
  readonly sets: readonly SetReckoning[];
  readonly nowMs: number;
};

export type NotUnderstood = {
  readonly document: 'house' | 'show' | 'state';
  readonly refusals: readonly Refusal[];
};

type Failed = { readonly ok: false; readonly error: NotUnderstood };

export type ReckonAnswer = { readonly ok: true; readonly value: Reckoning } | Failed;

const failed = (document: NotUnderstood['document'], refusals: readonly Refusal[]): Failed => ({
  ok: false,
  error: { document, refusals },
});

/** What the rules said of sets that have not changed since. */
const judged: JudgeMemory = new WeakMap();

type Read = {
  readonly house: House;
  readonly show: Show;
  readonly record: HouseState | null;
  readonly nowMs: number;
};

type ReadAnswer = { readonly ok: true; readonly value: Read } | Failed;

const readAll = (documents: Documents, clockMs: number, before: Reckoning | null): ReadAnswer => {
  const house = houseOf(documents.house, before);
  if (!house.ok) return failed('house', house.error);
  const show = readShowOnce(documents.show, house.value);
  if (!show.ok) return failed('show', show.error);
  const state = documents.state && readStateOnce(documents.state, house.value);
  if (state !== null && !state.ok) return failed('state', state.error);
  const record = state === null ? null : state.value.state;
  const nowMs = momentToJudge(house.value, record, clockMs);
  return { ok: true, value: { house: house.value, show: show.value.show, record, nowMs } };
};

type Kept = (lineSet: LineSet) => SetAssessment | undefined;

const reckonWith = (
  documents: Documents,
  { house, show, record, nowMs }: Read,
  before: Reckoning | null,
  kept: Kept,
): ReckonAnswer => {
  const assessment = assess(house, show, record, kept);
  const findings = judge(house, show, record, assessment, { nowMs, memory: judged });
  const value: Reckoning = {
    house,
    show,
    state: record,
    documents,
    assessment,
    findings,
    ofHouse: findings.filter(({ at: place }) => place.set === undefined),
    sets: [],
    nowMs,
  };
  return { ok: true, value: { ...value, sets: setsOf(value, before) } };
};

/** All documents through the engine. `before` is the last answer for the same house, if any. */
export const reckon = (
  documents: Documents,
  clockMs: number,
  before: Reckoning | null = null,
): ReckonAnswer => {
  const read = readAll(documents, clockMs, before);
  if (!read.ok) return read;
  return reckonWith(documents, read.value, before, keptFrom(documents, before));
};

/**
 * The same in small steps, for a change that touches every set: between them the page can answer
 * to the hand.
 */
export function* reckonInSteps(
  documents: Documents,
  clockMs: number,
  before: Reckoning | null = null,
): Generator<undefined, ReckonAnswer> {
  const read = readAll(documents, clockMs, before);
  if (!read.ok) return read;
  yield;
  const { house, show, record, nowMs } = read.value;
  const kept = keptFrom(documents, before);
  const assessOne = assessorOf(house, show, record);
  const done = new Map<LineSet, SetAssessment>();
  for (const lineSet of house.lineSets) {
    const set = kept(lineSet) ?? assessOne(lineSet);
    judgeSet(set, { house, show, state: record, nowMs }, judged);
    done.set(lineSet, set);
    yield;
  }
  return reckonWith(documents, read.value, before, (lineSet) => done.get(lineSet));
}

const houseOf = (raw: JsonObject, before: Reckoning | null) => {
  if (before !== null && before.documents.house === raw) {
    return { ok: true, value: before.house } as const;
  }
  const read = readHouseOnce(raw);
  return read.ok ? ({ ok: true, value: read.value.house } as const) : read;
};

const recordOf = ({ state }: Documents, id: string): Json | undefined =>
  at(state ?? undefined, ['sets', id]);

/** What one set is made from, besides its house; the same parts give the same assessment. */
const isUnchanged = (id: string, now: Documents, before: Documents): boolean =>
  now.house === before.house &&
  now.show['given'] === before.show['given'] &&
  writtenHang(now.show, id) === writtenHang(before.show, id) &&
  recordOf(now, id) === recordOf(before, id);

/** Of the last answer, each set of which nothing has changed since. */
const keptFrom = (documents: Documents, before: Reckoning | null) => {
  const old = new Map(before?.sets.map(({ id, set }) => [id, set]) ?? []);
  return ({ id }: LineSet): SetAssessment | undefined => {
    if (before === null) return undefined;
    if (isUnchanged(id, documents, before.documents)) return old.get(id);
    const ahead = answeredAhead.get(writtenHang(documents.show, id) ?? NOTHING);
    return ahead !== undefined && isSameAround(documents, ahead.documents) ? ahead.set : undefined;
  };
};

/** Sets that were answered before the rest of their house, by the hang as it was written. */
const answeredAhead = new WeakMap<
  JsonObject,
  { readonly documents: Documents; readonly set: SetAssessment }
>();
const NOTHING: JsonObject = {};

/** Whether two shows differ in what hangs and in nothing else, in one house and record. */
const isSameAround = (one: Documents, other: Documents): boolean =>
  one.house === other.house &&
  one.state === other.state &&
  ['given', 'cues', 'keptEmpty'].every((part) => one.show[part] === other.show[part]);

/** More than these are no edit of a cell. */
const AHEAD_MAX = 3;

/**
 * The sets that an edit changed, alone, so that their rows can be answered at once and all else a
 * moment later. Null where the change touches more than what hangs on a few sets.
 */
export const reckonAhead = (
  documents: Documents,
  before: Reckoning,
): readonly SetReckoning[] | null => {
  if (!isSameAround(documents, before.documents)) return null;
  const changed = before.house.lineSets.filter(
    ({ id }) => writtenHang(documents.show, id) !== writtenHang(before.documents.show, id),
  );
  if (changed.length === 0 || changed.length > AHEAD_MAX) return null;
  const read = readShowOnce(documents.show, before.house);
  if (!read.ok) return null;
  const { house, state, nowMs } = before;
  const { show } = read.value;
  const assessOne = assessorOf(house, show, state);
  return changed.map((lineSet): SetReckoning => {
    const { id } = lineSet;
    const written = writtenHang(documents.show, id);
    const set = assessOne(lineSet);
    if (written !== null) answeredAhead.set(written, { documents, set });
    const findings = judgeSet(set, { house, show, state, nowMs }, judged);
    return { id, set, written, findings, keptEmpty: show.keptEmpty[id] ?? null };
  });
};

const setsOf = (now: Reckoning, before: Reckoning | null): readonly SetReckoning[] => {
  const old = new Map(before?.sets.map((each) => [each.id, each]) ?? []);
  const bySet = groupedBySet(now.findings);
  return now.assessment.sets.map((set) => {
    const { id } = set.lineSet;
    const fresh: SetReckoning = {
      id,
      set,
      written: writtenHang(now.documents.show, id),
      findings: bySet.get(id) ?? [],
      keptEmpty: now.show.keptEmpty[id] ?? null,
    };
    const last = old.get(id);
    return last !== undefined && isSameSet(fresh, last) ? last : fresh;
  });
};

const groupedBySet = (findings: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> => {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const set = finding.at.set ?? '';
    groups.set(set, [...(groups.get(set) ?? []), finding]);
  }
  return groups;
};

const isSameSet = (one: SetReckoning, other: SetReckoning): boolean =>
  one.set === other.set &&
  one.written === other.written &&
  one.keptEmpty === other.keptEmpty &&
  one.findings.length === other.findings.length &&
  one.findings.every((finding, index) => isSameFinding(finding, other.findings[index]));

/** What is unknown is gathered anew each time, and mostly says the same. */
const isSameFinding = (one: Finding, other: Finding | undefined): boolean =>
  one === other || JSON.stringify(one) === JSON.stringify(other);
