/** What the wall shows of every set: the record, or while a call is open what the call has. */
import { useSyncExternalStore } from 'react';
import type { SetAssessment } from '#assessment';
import { type WallSigns, wallSigns } from '#drawings';
import { useWork } from '../reckoning/use-work.ts';

export type WallSets = {
  readonly sets: readonly SetAssessment[];
  readonly signs: (set: SetAssessment) => WallSigns;
};

/** `house` as its document is called; told by the screens of the call, which are fetched later. */
type ToldSets = WallSets & { readonly house: string };

let told: ToldSets | null = null;
const listeners = new Set<() => void>();

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

export const tellWall = (sets: ToldSets | null): void => {
  told = sets;
  for (const listener of listeners) listener();
};

export const useWallSets = (): WallSets & { readonly isOfCall: boolean } => {
  const { assessment, house, nowMs, kept } = useWork();
  const inCall = useSyncExternalStore(subscribe, () => told);
  return inCall !== null && inCall.house === kept.house.document['id']
    ? { ...inCall, isOfCall: true }
    : {
        sets: assessment.sets,
        signs: (set) => wallSigns(set, house, nowMs),
        isOfCall: false,
      };
};
