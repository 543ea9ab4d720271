/** The one live side of this page, and what of it a component looks at. */
import { useSyncExternalStore } from 'react';
import { TICK_MS } from '#events';
import { keeper } from '../keeping/use-keeper.ts';
import { heardBuild } from '../offline/house-fetch.ts';
import { boxesIn, passingBox } from './boxes.ts';
import { onDatabaseTaken } from './database-taken.ts';
import { deviceId, newId } from './device-key.ts';
import { Live, type LiveView } from './live.ts';
import { askAnswer, askPage, giveUp, openEvents, sendCommand } from './server.ts';
import { type Channel, TabStream } from './tabs.ts';

const CHANNEL = 'counterpoise.stream';

/** An old browser, or one that lets tabs know nothing of each other, has none. */
const channelOfTabs = (): Channel | null => {
  if (typeof BroadcastChannel === 'undefined') return null;
  const channel = new BroadcastChannel(CHANNEL);
  return {
    post: (said) => channel.postMessage(said),
    hear: (call) => {
      channel.addEventListener('message', ({ data }) => call(data));
    },
  };
};

const boxOfDevice = () => {
  try {
    return boxesIn(localStorage);
  } catch {
    return boxesIn(passingBox());
  }
};

const later = (call: () => void, milliseconds: number): (() => void) => {
  const timer = setTimeout(call, milliseconds);
  return () => clearTimeout(timer);
};

const device = deviceId();
const nowMs = (): number => Date.now();

export const live = new Live({
  stream: new TabStream({
    tab: newId(),
    channel: channelOfTabs(),
    openEvents: (after, ears) => openEvents({ after, device }, ears),
    askPage,
    later,
    nowMs,
    chance: Math.random,
  }),
  askPage,
  send: sendCommand,
  askAnswer,
  giveUp,
  boxes: boxOfDevice(),
  device,
  newId,
  nowMs,
  steadyMs: () => performance.now(),
  chance: Math.random,
  ticks: (call) => {
    const timer = setInterval(call, TICK_MS);
    return () => clearInterval(timer);
  },
  revisionOf: (document) => {
    const state = keeper.state();
    if (state.phase !== 'open') return null;
    return state.documents[document]?.server.revision ?? null;
  },
  refresh: () => keeper.refresh(),
  heardBuild,
});

/** How often a live page tells its copy that nothing newer is there. */
const CONFIRM_MS = 60_000;

/** From the first screen that has it to the end of the page. */
let isStarted = false;

export const startLive = (): void => {
  if (isStarted) return;
  isStarted = true;
  const turned = (): void =>
    document.visibilityState === 'visible' ? live.woke() : live.wentAway();
  document.addEventListener('visibilitychange', turned);
  // A page out of the browser's memory of the way back was never hidden by its own word.
  window.addEventListener('pageshow', ({ persisted }) => (persisted ? turned() : undefined));
  document.addEventListener('resume', turned);
  window.addEventListener('online', turned);
  window.addEventListener('pagehide', () => live.wentAway());
  onDatabaseTaken({ begins: live.wentAway, ends: live.taken });
  live.start();
  setInterval(
    () => (live.view().standing.is === 'live' ? keeper.confirm() : undefined),
    CONFIRM_MS,
  );
  if (document.visibilityState !== 'visible') live.wentAway();
};

export const useLive = (): LiveView => useSyncExternalStore(live.subscribe, live.view);
