/** What the live side asks of the server. Nothing here decides anything. */
import type { Command, CommandAnswer, EventOf, Heartbeat, HouseEvent, Standing } from '#events';
import { houseFetch, isOldBuild } from '../offline/house-fetch.ts';

export type EventsPage = {
  readonly events: readonly HouseEvent[];
  readonly heartbeat: Heartbeat;
};

/** `unheard`: no answer that says anything of the command; it may have arrived. */
export type Sent =
  | { readonly is: 'answered'; readonly answer: CommandAnswer }
  | {
      readonly is: 'rejected';
      readonly why: 'buildTooOld' | 'notAllowed' | 'notUnderstood';
    }
  | { readonly is: 'unheard' };

export type Asked = CommandAnswer | 'notThere' | 'unheard';

export type SaidNote = {
  readonly event: EventOf<'note written'>;
  /** What took it back; null where it holds. */
  readonly withdrawal: EventOf<'withdrawn'> | null;
  /** What has happened on its target last. */
  readonly seen: number;
};

export type SaidHere = {
  readonly notes: readonly SaidNote[];
  readonly signed: readonly { readonly event: EventOf<'signed'>; readonly standing: Standing }[];
  readonly seen: number | null;
  readonly isAll: boolean;
  /** Of the persons who wrote, signed and withdrew, by id. */
  readonly names: Readonly<Record<string, string>>;
  /** Of who asks. */
  readonly role: string;
  /** Signs and withdraws, by the role; a sign-off may be off all the same. */
  readonly maySign: boolean;
  readonly signOffs: boolean;
};

const get = async <T>(path: string): Promise<T | null> => {
  const response = await houseFetch(path, { headers: { accept: 'application/json' } }).catch(
    () => null,
  );
  return response?.ok === true ? ((await response.json().catch(() => null)) as T | null) : null;
};

const eventsPath = (after: number | null): string =>
  after === null ? '/api/events' : `/api/events?after=${after}`;

/** Null where it was not reached, or did not answer as it should. */
export const askPage = (after: number | null): Promise<EventsPage | null> => get(eventsPath(after));

export const askSaid = (target: string | null): Promise<SaidHere | null> =>
  get(target === null ? '/api/said' : `/api/said?target=${encodeURIComponent(target)}`);

type Problem = { readonly type?: string; readonly answer?: CommandAnswer };

export const sendCommand = async (command: Command): Promise<Sent> => {
  const response = await houseFetch('/api/commands', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(command),
  }).catch(() => null);
  const body: unknown = await response?.json().catch(() => null);
  if (response === null || body === null || body === undefined) return { is: 'unheard' };
  if (response.ok) return { is: 'answered', answer: body as CommandAnswer };
  const problem = body as Problem;
  if (problem.answer !== undefined) return { is: 'answered', answer: problem.answer };
  if (isOldBuild(problem)) return { is: 'rejected', why: 'buildTooOld' };
  if (response.status === 401 || response.status === 403) {
    return { is: 'rejected', why: 'notAllowed' };
  }
  return response.status === 400 ? { is: 'rejected', why: 'notUnderstood' } : { is: 'unheard' };
};

export const askAnswer = async (commandId: string): Promise<Asked> => {
  const response = await houseFetch(`/api/commands/${commandId}`).catch(() => null);
  if (response?.status === 404) return 'notThere';
  if (response?.ok !== true) return 'unheard';
  return ((await response.json().catch(() => null)) as CommandAnswer | null) ?? 'unheard';
};

/** The last word on a command; null where the server did not give it. */
export const giveUp = async (commandId: string): Promise<CommandAnswer | null> => {
  const path = `/api/commands/${commandId}/give-up`;
  const response = await houseFetch(path, { method: 'POST' }).catch(() => null);
  if (response?.ok !== true) return null;
  return (await response.json().catch(() => null)) as CommandAnswer | null;
};

export type StreamEars = {
  readonly heartbeat: (heartbeat: Heartbeat) => void;
  readonly event: (event: HouseEvent) => void;
  /** The server has enough streams of this device: look now and then instead. */
  readonly crowded: () => void;
  readonly failed: () => void;
};

/** The answer closes it. The browser's own way of opening it again is not used. */
export const openEvents = (
  asked: { readonly after: number | null; readonly device: string },
  ears: StreamEars,
): (() => void) => {
  const { after, device } = asked;
  const path = `/api/events?device=${device}${after === null ? '' : `&after=${after}`}`;
  const source = new EventSource(path);
  const dataOf = <T>({ data }: MessageEvent<string>): T => JSON.parse(data) as T;
  source.addEventListener('message', (told) => ears.event(dataOf(told)));
  source.addEventListener('heartbeat', (told) => ears.heartbeat(dataOf(told)));
  source.addEventListener('leave', () => {
    source.close();
    ears.crowded();
  });
  source.addEventListener('error', () => {
    source.close();
    ears.failed();
  });
  return () => source.close();
};
