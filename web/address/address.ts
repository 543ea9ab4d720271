/** The address bar names what is shown, so that a link or a label on an arbor opens it again. */
import { unreachable } from '#outcome';

export type Place =
  | { readonly kind: 'hangList' }
  | { readonly kind: 'set'; readonly set: string }
  /** The list of sheets, or one of them: `balance-card/11`. */
  | { readonly kind: 'sheets'; readonly sheet: string | null }
  | { readonly kind: 'house' }
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

const placeOf = (path: string): Place => {
  const [first = '', ...rest] = path
    .split('/')
    .filter((part) => part !== '')
    .map(decoded);
  if (first === '' || (first === 'hang-list' && rest.length === 0)) return { kind: 'hangList' };
  if (first === 'set' && rest.length === 1) return { kind: 'set', set: rest[0] ?? '' };
  if (first === 'sheets') {
    return { kind: 'sheets', sheet: rest.length === 0 ? null : rest.join('/') };
  }
  if (first === 'self-check' && rest.length === 0) return { kind: 'selfCheck' };
  return first === 'house' && rest.length === 0 ? { kind: 'house' } : { kind: 'nowhere', path };
};

const pathOf = (place: Place): string => {
  switch (place.kind) {
    case 'hangList':
      return '/hang-list';
    case 'set':
      return `/set/${encodeURIComponent(place.set)}`;
    case 'sheets':
      return place.sheet === null
        ? '/sheets'
        : `/sheets/${place.sheet.split('/').map(encodeURIComponent).join('/')}`;
    case 'house':
      return '/house';
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
  return { place: placeOf(path), house: asked.get('house'), show: asked.get('show') };
};

/** The path with its query, as it goes into the address bar. */
export const writeAddress = ({ place, house, show }: Address): string => {
  const asked = new URLSearchParams();
  if (house !== null) asked.set('house', house);
  if (show !== null) asked.set('show', show);
  const query = asked.toString();
  return query === '' ? pathOf(place) : `${pathOf(place)}?${query}`;
};
