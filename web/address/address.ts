/** The address bar names what is shown, so that a link or a label on an arbor opens it again. */
import { unreachable } from '#outcome';

/** How the set stands before the first step: a person says bare, the plan has it, the record. */
export type OrderStartName = 'bare' | 'planned' | 'recorded';
export type OrderJobName = 'load' | 'strike' | 'change';

/**
 * Section and plan are drawings; limits are everything else that is known of the house, to be read;
 * enter is where it is typed in, and found is what stands there, written down on a walk round.
 */
export type HousePart = 'section' | 'plan' | 'limits' | 'enter' | 'found';

/** Signing in, coming in by the owner's code or by an invitation, and what one owns of it. */
export type PeoplePart = 'list' | 'signIn' | 'owner' | 'join' | 'devices' | 'programs';

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
  | {
      readonly kind: 'house';
      readonly part: HousePart;
      readonly at: string | null;
      /** Part of the form that is filled in, or the set that was walked up to. */
      readonly inside?: string;
      /** The field to go to, by ids: `rules.lockLimit`. */
      readonly field?: string;
    }
  /** Free sets for a piece: what this set hangs, or null for a new one. */
  | { readonly kind: 'whichSet'; readonly piece: string | null }
  | { readonly kind: 'bringIn' }
  /** Files for others, drawings of them at a moment, as for the house. */
  | { readonly kind: 'takeOut'; readonly at: string | null }
  /** A question about one set: what would be changed in its hang, written short. */
  | { readonly kind: 'whatIf'; readonly set: string; readonly change: string | null }
  /** Two hangs: `other` of the same show, or of a show in a house where those are named. */
  | {
      readonly kind: 'compare';
      readonly set: string;
      readonly other: string | null;
      readonly show: string | null;
      readonly house: string | null;
      /** Of the other show; null is as it stands now. */
      readonly revision: number | null;
    }
  /** The show fitted to another house: pieces moved by hand as `9>12,11>`. */
  | { readonly kind: 'anotherHouse'; readonly to: string | null; readonly moved: string | null }
  | { readonly kind: 'selfCheck' }
  /** Where the server is, and how it is. */
  | { readonly kind: 'thisServer' }
  | { readonly kind: 'people'; readonly part: PeoplePart }
  /** What people wrote, about sets and about the house. */
  | { readonly kind: 'notes' }
  /** A call with the crew: this device's post, or what is named behind `/live`. */
  | { readonly kind: 'live'; readonly path: readonly string[] }
  /** Practice with a simulated crew; nothing of it is recorded. */
  | { readonly kind: 'drill' }
  /**
   * Houses and shows; or the revisions of one document, and which two are compared: null where the
   * address leaves it open.
   */
  | {
      readonly kind: 'documents';
      readonly document: string | null;
      readonly older: number | null;
      readonly newer: number | null;
    }
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

const DRAWINGS: readonly HousePart[] = ['section', 'plan'];
const HOUSE_PARTS: readonly HousePart[] = [...DRAWINGS, 'limits', 'enter', 'found'];
/** Of these one part of the form, or one set, has an address of its own. */
const WITH_INSIDE: readonly HousePart[] = ['enter', 'found'];

const houseOf = (rest: readonly string[], asked: URLSearchParams, path: string): Place => {
  const [named = 'section', inside, ...more] = rest;
  const part = HOUSE_PARTS.find((each) => each === named);
  if (part === undefined || more.length > 0) return { kind: 'nowhere', path };
  if (inside !== undefined && !WITH_INSIDE.includes(part)) return { kind: 'nowhere', path };
  const field = part === 'enter' ? asked.get('field') : null;
  return {
    kind: 'house',
    part,
    at: DRAWINGS.includes(part) ? asked.get('at') : null,
    ...(inside === undefined ? {} : { inside }),
    ...(field === null ? {} : { field }),
  };
};

/** A revision; what is no whole number leaves it open. */
const revisionOf = (text: string | null): number | null =>
  text !== null && /^[1-9]\d{0,8}$/.test(text) ? Number(text) : null;

const documentsOf = (rest: readonly string[], asked: URLSearchParams, path: string): Place => {
  const [document = null, ...more] = rest;
  if (more.length === 0 && document === 'bring-in') return { kind: 'bringIn' };
  if (more.length === 0 && document === 'take-out') return { kind: 'takeOut', at: asked.get('at') };
  if (more.length > 0 || (document !== null && !document.includes(':'))) {
    return { kind: 'nowhere', path };
  }
  const of = (name: string) => (document === null ? null : revisionOf(asked.get(name)));
  return { kind: 'documents', document, older: of('older'), newer: of('newer') };
};

const ofSet = (
  [set = '', part]: readonly string[],
  asked: URLSearchParams,
  path: string,
): Place => {
  if (part === 'what-if') return { kind: 'whatIf', set, change: asked.get('if') };
  if (part !== 'beside') return { kind: 'nowhere', path };
  const [show, house] = [asked.get('otherShow'), asked.get('otherHouse')];
  const revision = revisionOf(asked.get('otherRevision'));
  return { kind: 'compare', set, other: asked.get('other'), show, house, revision };
};

const PEOPLE_PATHS: Readonly<Record<PeoplePart, string>> = {
  list: '/people',
  signIn: '/people/sign-in',
  owner: '/people/owner',
  join: '/join',
  devices: '/people/devices',
  programs: '/people/programs',
};
const PEOPLE_PARTS = Object.keys(PEOPLE_PATHS) as readonly PeoplePart[];

const placeOf = (path: string, asked: URLSearchParams): Place => {
  const [first = '', ...rest] = path
    .split('/')
    .filter((part) => part !== '')
    .map(decoded);
  if (first === '' || (first === 'hang-list' && rest.length === 0)) return { kind: 'hangList' };
  if (first === 'set' && rest.length === 2) return ofSet(rest, asked, path);
  if (first === 'another-house' && rest.length === 0) {
    return { kind: 'anotherHouse', to: asked.get('to'), moved: asked.get('moved') };
  }
  if (first === 'set' && rest.length === 1) return { kind: 'set', set: rest[0] ?? '' };
  if (first === 'order' && rest.length === 1) return orderOf(rest[0] ?? '', asked);
  if (first === 'sheets') {
    return { kind: 'sheets', sheet: rest.length === 0 ? null : rest.join('/') };
  }
  if (first === 'which-set' && rest.length === 0) {
    return { kind: 'whichSet', piece: asked.get('piece') };
  }
  if (first === 'self-check' && rest.length === 0) return { kind: 'selfCheck' };
  if (first === 'this-server' && rest.length === 0) return { kind: 'thisServer' };
  if (first === 'notes' && rest.length === 0) return { kind: 'notes' };
  if (first === 'drill' && rest.length === 0) return { kind: 'drill' };
  if (first === 'live') return { kind: 'live', path: rest };
  if (first === 'documents') return documentsOf(rest, asked, path);
  const part = PEOPLE_PARTS.find((each) => PEOPLE_PATHS[each] === `/${[first, ...rest].join('/')}`);
  if (part !== undefined) return { kind: 'people', part };
  return first === 'house' ? houseOf(rest, asked, path) : { kind: 'nowhere', path };
};

const housePath = ({ part, inside }: Extract<Place, { readonly kind: 'house' }>): string => {
  if (part === 'section') return '/house';
  return inside === undefined ? `/house/${part}` : `/house/${part}/${encodeURIComponent(inside)}`;
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
      return housePath(place);
    case 'whatIf':
      return `/set/${encodeURIComponent(place.set)}/what-if`;
    case 'compare':
      return `/set/${encodeURIComponent(place.set)}/beside`;
    case 'anotherHouse':
      return '/another-house';
    case 'whichSet':
      return '/which-set';
    case 'bringIn':
      return '/documents/bring-in';
    case 'takeOut':
      return '/documents/take-out';
    case 'selfCheck':
      return '/self-check';
    case 'thisServer':
      return '/this-server';
    case 'people':
      return PEOPLE_PATHS[place.part];
    case 'notes':
      return '/notes';
    case 'drill':
      return '/drill';
    case 'live':
      return ['/live', ...place.path.map(encodeURIComponent)].join('/');
    case 'documents':
      return place.document === null
        ? '/documents'
        : `/documents/${encodeURIComponent(place.document)}`;
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

/** What a question is about, by the names of its query. */
const askedOf = (place: Place): readonly (readonly [string, string | null])[] => {
  if (place.kind === 'whatIf') return [['if', place.change]];
  if (place.kind === 'anotherHouse')
    return [
      ['to', place.to],
      ['moved', place.moved],
    ];
  if (place.kind !== 'compare') return [];
  return [
    ['other', place.other],
    ['otherShow', place.show],
    ['otherHouse', place.house],
    ['otherRevision', place.revision === null ? null : String(place.revision)],
  ];
};

/** The path with its query, as it goes into the address bar. */
export const writeAddress = ({ place, house, show }: Address): string => {
  const asked = new URLSearchParams();
  if (place.kind === 'order' && place.job !== null) asked.set('job', place.job);
  if (place.kind === 'order' && place.from !== null) asked.set('from', place.from);
  if ((place.kind === 'house' || place.kind === 'takeOut') && place.at !== null) {
    asked.set('at', place.at);
  }
  if (place.kind === 'house' && place.field !== undefined) asked.set('field', place.field);
  if (place.kind === 'whichSet' && place.piece !== null) asked.set('piece', place.piece);
  if (place.kind === 'documents') {
    if (place.older !== null) asked.set('older', String(place.older));
    if (place.newer !== null) asked.set('newer', String(place.newer));
  }
  for (const [name, value] of askedOf(place)) if (value !== null) asked.set(name, value);
  if (house !== null) asked.set('house', house);
  if (show !== null) asked.set('show', show);
  const query = asked.toString();
  return query === '' ? pathOf(place) : `${pathOf(place)}?${query}`;
};
