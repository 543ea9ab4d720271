/** A piece put on the set that was chosen for it: one edit of the show, judged by the documents. */
import { metres } from '#quantities';
import { hangPath, writtenHang } from '../editing/show-edits.ts';
import { isList, isObject, type Json, type JsonObject, withAt } from '../keeping/json.ts';
import type { Typed } from './typed-piece.ts';

type Move = {
  readonly to: string;
  /** Sets of the house in rail order, so that the document stays in that order too. */
  readonly railOrder: readonly string[];
};

const without = (object: JsonObject, key: string): JsonObject =>
  Object.fromEntries(Object.entries(object).filter(([each]) => each !== key));

const inRailOrder = (hangs: readonly Json[], railOrder: readonly string[]): readonly Json[] => {
  const placeOf = (hang: Json): number =>
    railOrder.indexOf(isObject(hang) ? String(hang['set']) : '');
  return hangs.toSorted((one, other) => placeOf(one) - placeOf(other));
};

/** Whoever was coupled with the old set is coupled with the new one, and cues go with the piece. */
const renamed = (value: Json | undefined, from: string, to: string): Json | undefined => {
  if (!isList(value)) return value;
  return value.map((each): Json => {
    if (!isObject(each)) return each;
    const coupled = each['coupledWith'];
    const cue = each['number'] !== undefined && each['set'] === from ? { set: to } : {};
    if (!isList(coupled) || !coupled.includes(from)) return { ...each, ...cue };
    return { ...each, ...cue, coupledWith: coupled.map((set) => (set === from ? to : set)) };
  });
};

/** That a set was kept empty for a reason is no longer said once something hangs there. */
const hungOn = (show: JsonObject, hangs: readonly Json[], { to, railOrder }: Move): JsonObject => {
  const hung: JsonObject = { ...show, hangs: inRailOrder(hangs, railOrder) };
  const kept = hung['keptEmpty'];
  return isObject(kept) && kept[to] !== undefined
    ? (withAt(hung, ['keptEmpty', to], undefined) as JsonObject)
    : hung;
};

/** Bricks that a person fixed belong to the arbor that the piece leaves. */
export const withMovedHang = (show: JsonObject, from: string, move: Move): JsonObject => {
  const hang = writtenHang(show, from);
  const path = hangPath(show, from);
  if (hang === null || path === null || from === move.to) return show;
  const fresh = { ...without(hang, 'bricks'), set: move.to };
  const moved = withAt(show, path, fresh) as JsonObject;
  const hangs = renamed(moved['hangs'], from, move.to);
  const cues = renamed(moved['cues'], from, move.to);
  const rest = cues === undefined ? moved : { ...moved, cues };
  return hungOn(rest, isList(hangs) ? hangs : [], move);
};

const SOURCE = { basis: 'estimated', source: 'typed to look for a set' } as const;

const measured = (text: string, field: string): JsonObject =>
  text.trim() === '' ? {} : { [field]: { value: text.trim(), ...SOURCE } };

const metresText = (valueM: number): string => `${Math.round(valueM * 1e6) / 1e6} m`;

/** A new piece as it was typed; what was left blank stays unknown. */
export const withNewPiece = (
  show: JsonObject,
  typed: Typed,
  { widthM, ...move }: Move & { readonly widthM: number | null },
): JsonObject => {
  const name = typed.name.trim() === '' ? 'New piece' : typed.name.trim();
  const trims = [
    ['low', typed.low],
    ['high', typed.high],
  ].flatMap(([called = '', text = '']): readonly JsonObject[] =>
    text.trim() === '' ? [] : [{ name: called, ...measured(text, 'height'), reference: 'batten' }],
  );
  const half = widthM === null ? null : metres(widthM / 2);
  const item: JsonObject = {
    id: 'piece',
    name,
    kind: 'clear',
    takeoff: { by: 'mass', ...measured(typed.mass, 'mass') },
    ...(half === null ? {} : { placement: { from: metresText(-half), to: metresText(half) } }),
  };
  const hang: JsonObject = {
    set: move.to,
    name,
    family: 'other',
    ...measured(typed.halfDepth, 'halfDepth'),
    trims,
    items: [item],
  };
  const hangs = show['hangs'];
  return hungOn(show, [...(isList(hangs) ? hangs : []), hang], move);
};
