/** Where the screens of a call are. */
import type { PostId } from '#state';
import type { Place } from '../address/address.ts';

export const LIVE_PLACE: Place = { kind: 'live', path: [] };
export const OPEN_PLACE: Place = { kind: 'live', path: ['open'] };
/** Of the head flyman: all sets, posts and stops. */
export const OVERVIEW_PLACE: Place = { kind: 'live', path: ['head'] };
export const JOIN_PLACE: Place = { kind: 'live', path: ['join'] };

export const postPlace = (post: PostId): Place => ({ kind: 'live', path: ['post', post] });
/** Where how a set was found is written, counted and measured. */
export const foundPlace = (set: string): Place => ({ kind: 'live', path: ['set', set] });

/** Practice, apart from every call. */
export const DRILL_PLACE: Place = { kind: 'drill' };
