/** The one call of this page: what a component looks at, and what a person says in it. */
import { useEffect, useSyncExternalStore } from 'react';
import { type CallDesk, type CallDocuments, openDesk } from '#call';
import { passingBox } from '../live/boxes.ts';
import { deviceId } from '../live/device-key.ts';
import { askPage, askSaid } from '../live/server.ts';
import { live, startLive } from '../live/use-live.ts';
import { momentNow } from '../offline/house-fetch.ts';
import { type DocumentsOfCall, useDocumentsOf } from './call-documents.ts';
import { askBegin } from './call-server.ts';
import { callBoxIn } from './kept-call.ts';
import { type CallSeen, CallStore } from './store.ts';

const boxOfDevice = () => {
  try {
    return callBoxIn(localStorage);
  } catch {
    return callBoxIn(passingBox());
  }
};

export const callStore = new CallStore({
  live,
  askPage,
  askBegin,
  askSeen: async (target) => (await askSaid(target))?.seen ?? null,
  box: boxOfDevice(),
  device: deviceId(),
  moment: momentNow,
  later: (call, milliseconds) => {
    const timer = setTimeout(call, milliseconds);
    return () => clearTimeout(timer);
  },
});

/** From the first screen that has it to the end of the page. */
let isStarted = false;

const startCall = (): void => {
  startLive();
  if (isStarted) return;
  isStarted = true;
  callStore.start();
  window.addEventListener('pagehide', callStore.leaving);
};

export type CallHere = CallSeen & {
  readonly documents: CallDocuments | null;
  /** Why there are no documents, and so no figures; null where there are. */
  readonly noDocuments: Exclude<DocumentsOfCall['is'], 'here'> | null;
  /** What the rules say; null where this device has other documents than the call. */
  readonly desk: CallDesk | null;
};

/** One desk for the page: what it has worked out of a set it need not work out again. */
let opened: { readonly documents: CallDocuments; readonly desk: CallDesk } | null = null;

const deskOf = (documents: CallDocuments): CallDesk => {
  if (opened?.documents !== documents) opened = { documents, desk: openDesk(documents) };
  return opened.desk;
};

export const useCall = (): CallHere => {
  const seen = useSyncExternalStore(callStore.subscribe, callStore.seen);
  useEffect(startCall, []);
  const read = useDocumentsOf(seen.now?.call ?? null, seen.isLive);
  const documents = read.is === 'here' ? read.documents : null;
  const noDocuments = read.is === 'here' ? null : read.is;
  return { ...seen, documents, noDocuments, desk: documents && deskOf(documents) };
};
