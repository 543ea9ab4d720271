/** What the desk asks of the server about a call as a whole, and of its posts. */
import type { PostId } from '#state';
import { type Answer, askPeople } from '../people/ask-people.ts';

export type CallOpened = { readonly call: string };

export type OpenAsked = {
  readonly house: string;
  readonly show: string;
  /** Null where nobody has recorded how the sets stand. */
  readonly state: string | null;
  readonly device: string;
  readonly name: string;
};

export const openCall = (asked: OpenAsked): Promise<Answer<CallOpened>> =>
  askPeople('POST', '/api/call', asked);

/** Writes the state document from the record of the call. */
export const closeCall = (words: string): Promise<Answer<unknown>> =>
  askPeople('DELETE', '/api/call', { words });

export type JoiningCode = {
  readonly code: string;
  /** Path of the page that takes the code. */
  readonly link: string;
  readonly expiresMs: number;
};

export const makeCode = (post: PostId, answersFor: boolean): Promise<Answer<JoiningCode>> =>
  askPeople('POST', '/api/call/codes', { post, answersFor });
