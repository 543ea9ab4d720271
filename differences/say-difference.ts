/**
 * The difference of two revisions as sentences in the words of the trade, gathered by set or part.
 * Every changed place is in one line; where nobody has said what a field is called, its path in the
 * document stands beside it.
 */
import type { Json, JsonObject } from '#documents';
import { inVoice, message, phrase, type Voice } from '#texts';
import { type ChangedPlace, changedPlaces, isMeasured } from './changed-places.ts';
import { field, isList, isObject } from './json.ts';
import { changeWords, fateOf, fateWords, labelAt, leafLines } from './say-place.ts';
import { keysOf, pathWords, type Spot, spotKey } from './spot.ts';
import { keyWords } from './value-words.ts';

export type DifferenceLine = {
  readonly key: string;
  readonly spot: Spot;
  /** `mass of Dining room flat 310 lb, was 300 lb`. */
  readonly words: string;
  /** Where it stands in the document, for what has no words of ours; null where it has. */
  readonly path: string | null;
  /** What an added or removed thing says, value by value. */
  readonly details: readonly string[];
};

export type DifferenceGroup = {
  readonly key: string;
  /** `Set 11, Dining room`. */
  readonly heading: string;
  /** The set that it is about; null for other parts. */
  readonly set: string | null;
  readonly lines: readonly DifferenceLine[];
};

/** The difference of two documents of one kind, in the words of a house. */
export const sayDifference = (
  before: JsonObject,
  after: JsonObject,
  voice: Voice,
): readonly DifferenceGroup[] => {
  const groups = new Map<string, { subject: Subject; lines: DifferenceLine[] }>();
  for (const place of changedPlaces(before, after)) {
    const subject = subjectOf(place.spot, { before, after, voice });
    const line = lineOf(place, subject, { before, after, voice });
    const group = groups.get(subject.key);
    if (group === undefined) groups.set(subject.key, { subject, lines: [line] });
    else group.lines.push(line);
  }
  return [...groups.values()].map(({ subject, lines }) => ({
    key: subject.key,
    heading: subject.heading,
    set: subject.set,
    lines,
  }));
};

type Both = { readonly before: JsonObject; readonly after: JsonObject; readonly voice: Voice };

type Subject = {
  readonly key: string;
  readonly heading: string;
  readonly set: string | null;
  /** How many steps of the path the heading says already. */
  readonly steps: number;
};

const SETS: readonly string[] = ['hangs', 'lineSets', 'sets', 'keptEmpty'];

const PARTS: Readonly<Record<string, string>> = {
  brickKinds: message('Brick kind'),
  galleries: message('Gallery'),
  rails: message('Rail'),
  bays: message('Bay'),
  loftWells: message('Loft well'),
  eyes: message('Eye'),
  keepOuts: message('Keep-out'),
  openings: message('Opening in the deck'),
  equipment: message('Aid'),
  setTypes: message('Set type'),
  cues: message('Cue'),
};

const WHOLE_PARTS: Readonly<Record<string, string>> = {
  stage: message('Stage'),
  rules: message('House rules'),
  spreader: message('Spreader plates'),
};

const KINDS: Readonly<Record<string, string>> = {
  'counterpoise-house': message('The house'),
  'counterpoise-show': message('The show'),
  'counterpoise-state': message('The record'),
};

const subjectOf = (spot: Spot, both: Both): Subject => {
  const { after, voice } = both;
  const [first, second] = spot;
  const list = first?.of === 'field' ? first.name : '';
  const key = second?.of === 'entry' ? second.key : second?.of === 'field' ? second.name : null;
  if (key !== null && SETS.includes(list)) {
    const hung = list === 'hangs' ? nameAt(spot.slice(0, 2), both) : undefined;
    const heading =
      hung === undefined
        ? phrase(voice, 'Set {id}', { id: key })
        : phrase(voice, 'Set {id}, {name}', { id: key, name: hung });
    return { key: `set ${key}`, heading, set: key, steps: 2 };
  }
  const part = PARTS[list];
  if (key !== null && part !== undefined && (second?.of === 'entry' || list !== 'cues')) {
    const called = list === 'cues' ? keyWords(key, voice) : key;
    const name = nameAt(spot.slice(0, 2), both) ?? called;
    const heading = `${inVoice(voice, part)} ${name}`;
    return { key: `${list} ${key}`, heading, set: null, steps: 2 };
  }
  const whole = WHOLE_PARTS[list];
  if (whole !== undefined)
    return { key: list, heading: inVoice(voice, whole), set: null, steps: 1 };
  const kind = KINDS[String(field(after, 'format'))] ?? message('The document');
  return { key: '', heading: inVoice(voice, kind), set: null, steps: 0 };
};

const valueAt = (root: Json, spot: Spot): Json | undefined =>
  spot.reduce<Json | undefined>((value, step) => {
    if (step.of === 'field') return isObject(value) ? field(value, step.name) : undefined;
    if (step.of === 'order' || !isList(value)) return undefined;
    return value[keysOf(value)?.indexOf(step.key) ?? -1];
  }, root);

/** What a person calls a thing: its name now, or the one it had. */
const nameAt = (spot: Spot, { before, after }: Both): string | undefined => {
  const names = [after, before].map((root) => {
    const thing = valueAt(root, spot);
    return isObject(thing) ? field(thing, 'name') : undefined;
  });
  return names.find((name) => typeof name === 'string');
};

const lineOf = (place: ChangedPlace, subject: Subject, both: Both): DifferenceLine => {
  const { spot } = place;
  const { voice } = both;
  const label = labelAt(spot, subject.steps, voice, (at) => nameAt(at, both));
  const whole = { key: spotKey(spot), spot, path: label.isCovered ? null : pathWords(spot) };
  const fate = fateOf(place);
  const thing = place.after ?? place.before;
  const isThing = isObject(thing) && !isMeasured(thing);
  if (fate !== 'changed' && isThing) {
    return {
      ...whole,
      words: wordsOfThing(place, label.words, both),
      details: leafLines(thing, spot, spot.length, voice),
    };
  }
  const name = label.words === '' ? '' : `${label.words} `;
  return { ...whole, words: `${name}${changeWords(place, voice)}`, details: [] };
};

/** A thing that came or went: what hangs on a set, a cue, a brick kind, an item. */
const wordsOfThing = (place: ChangedPlace, label: string, both: Both): string => {
  const { voice } = both;
  const { spot } = place;
  const fate = fateOf(place) === 'added' ? 'added' : 'gone';
  const list = spot[0]?.of === 'field' ? spot[0].name : '';
  if (list === 'hangs' && spot.length === 2) {
    const name = nameAt(spot, both) ?? '';
    return fate === 'added'
      ? phrase(voice, '{name} hangs here; nothing hung here before', { name })
      : phrase(voice, 'nothing hangs here; {name} hung here before', { name });
  }
  return fateWords(fate, label, voice);
};
