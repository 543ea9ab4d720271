/** The last that this device knew of a call, kept over a restart of it; of one record only. */
import type { CallFold } from './call-fold.ts';

type Box = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const KEY = 'counterpoise.call';
/** What is folded differently by another build is asked for anew. */
const SHAPE = 1;

export type CallBox = {
  readonly kept: () => CallFold | null;
  /** False where the device would not take it: then there is nothing to show after a restart. */
  readonly keep: (fold: CallFold) => boolean;
  readonly drop: () => void;
};

const isFold = (value: unknown): value is CallFold =>
  typeof value === 'object' &&
  value !== null &&
  'recordKey' in value &&
  'hash' in value &&
  'lastOn' in value &&
  'read' in value &&
  'now' in value &&
  typeof value.now === 'object' &&
  value.now !== null &&
  'seq' in value.now &&
  'sets' in value.now;

const parsed = (text: string | null): CallFold | null => {
  try {
    const value: unknown = JSON.parse(text ?? 'null');
    const isOurs = typeof value === 'object' && value !== null && 'shape' in value;
    return isOurs && value.shape === SHAPE && 'fold' in value && isFold(value.fold)
      ? value.fold
      : null;
  } catch {
    return null;
  }
};

export const callBoxIn = (box: Box): CallBox => ({
  kept: () => parsed(box.getItem(KEY)),
  keep: (fold) => {
    try {
      box.setItem(KEY, JSON.stringify({ shape: SHAPE, fold }));
      return true;
    } catch {
      return false;
    }
  },
  drop: () => box.removeItem(KEY),
});
