/** The address bar names what is shown, so that a link or a label on an arbor opens it again. */
import { unreachable } from '#outcome';

/** How the set stands before the first step: a person says bare, the plan has it, the record. */
export type OrderStartName = 'bare' | 'planned' | 'recorded';
export type OrderJobName = 'load' | 'strike' | 'change';

/** Section and plan are drawings; limits are everything else that is known of the house. */
export type HousePart = 'section' | 'plan' | 'limits';

export type Place =
  | { readonly kind: 'hangList' }
  | { readonly kind: 'set'; readonly set: string }
  /** The order of work of one set; null where the address leaves the job or the start open. */
  | {
      readonly kind: 'order';
      readonly set: string;
      readonly job: OrderJobName | null;
      readonly from: OrderStartName | null;
    }
  /** The list of sheets, or one of them: `balance-card/11`. */
  | { readonly kind: 'sheets'; readonly sheet: string | null }
  /** The drawings of the house at a moment, `trim:playing`; null is the record. Or its limits. */
  | { readonly kind: 'house'; readonly part: HousePart; readonly at: string | null }
  /** Free sets for a piece: what this set hangs, or null for a new one. */
  | { readonly kind: 'whichSet'; readonly piece: string | null }
  | { readonly kind: 'selfCheck' }
  | { readonly kind: 'nowhere'; readonly path: string };

export type Address = {
  readonly place: Place;
  /** Null where the address does not say: the first of the database is meant. */
  readonly house: string | null;
  readonly show: string | null;
};

const decoded = (part: string): string => {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
};

export const JOBS: readonly OrderJobName[] = ['load', 'strike', 'change'];
export const STARTS: readonly OrderStartName[] = ['bare', 'planned', 'recorded'];

const orderOf = (set: string, asked: URLSearchParams): Place => ({
  kind: 'order',
  set,
  job: JOBS.find((job) => job === asked.get('job')) ?? null,
  from: STARTS.find((from) => from === asked.get('from')) ?? null,
});

const HOUSE_PARTS: readonly HousePart[] = ['section', 'plan', 'limits'];

const houseOf = (rest: readonly string[], asked: URLSearchParams, path: string): Place => {
  const [named = 'section', ...more] = rest;
  const part = HOUSE_PARTS.find((each) => each === named);
  return part === undefined || more.length > 0
    ? { kind: 'nowhere', path }
    : { kind: 'house', part, at: part === 'limits' ? null : asked.get('at') };
};

const placeOf = (path: string, asked: URLSearchParams): Place => {
  const [first = '', ...rest] = path
    .split('/')
    .filter((part) => part !== '')
    .map(decoded);
  if (first === '' || (first === 'hang-list' && rest.length === 0)) return { kind: 'hangList' };
  if (first === 'set' && rest.length === 1) return { kind: 'set', set: rest[0] ?? '' };
  if (first === 'order' && rest.length === 1) return orderOf(rest[0] ?? '', asked);
  if (first === 'sheets') {
    return { kind: 'sheets', sheet: rest.length === 0 ? null : rest.join('/') };
  }
  if (first === 'which-set' && rest.length === 0) {
    return { kind: 'whichSet', piece: asked.get('piece') };
  }
  if (first === 'self-check' && rest.length === 0) return { kind: 'selfCheck' };
  return first === 'house' ? houseOf(rest, asked, path) : { kind: 'nowhere', path };
};

const pathOf = (place: Place): string => {
  switch (place.kind) {
    case 'hangList':
      return '/hang-list';
    case 'set':
      return `/set/${encodeURIComponent(place.set)}`;
    case 'order':
      return `/order/${encodeURIComponent(place.set)}`;
    case 'sheets':
      return place.sheet === null
        ? '/sheets'
        : `/sheets/${place.sheet.split('/').map(encodeURIComponent).join('/')}`;
    case 'house':
      return place.part === 'section' ? '/house' : `/house/${place.part}`;
    case 'whichSet':
      return '/which-set';
    case 'selfCheck':
      return '/self-check';
    case 'nowhere':
      return place.path;
    default:
      return unreachable(place);
  }
};

/** From the parts of a URL. */
export const readAddress = (path: string, query: string): Address => {
  const asked = new URLSearchParams(query);
  return { place: placeOf(path, asked), house: asked.get('house'), show: asked.get('show') };
};

/** The path with its query, as it goes into the address bar. */
export const writeAddress = ({ place, house, show }: Address): string => {
  const asked = new URLSearchParams();
  if (place.kind === 'order' && place.job !== null) asked.set('job', place.job);
  if (place.kind === 'order' && place.from !== null) asked.set('from', place.from);
  if (place.kind === 'house' && place.at !== null) asked.set('at', place.at);
  if (place.kind === 'whichSet' && place.piece !== null) asked.set('piece', place.piece);
  if (house !== null) asked.set('house', house);
  if (show !== null) asked.set('show', show);
  const query = asked.toString();
  return query === '' ? pathOf(place) : `${pathOf(place)}?${query}`;
};
