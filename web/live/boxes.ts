/**
 * What this device keeps over a restart of it: how far it has come in whose record, and commands
 * that nobody has answered yet. Tabs share it; a command that two of them send is one by its id.
 */
import type { Command, Pinned } from '#events';

type Box = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const PINNED = 'counterpoise.record';
const UNSENT = 'counterpoise.unsent.';

const parsed = (text: string | null): unknown => {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return null;
  }
};

const isPinned = (value: unknown): value is Pinned =>
  typeof value === 'object' &&
  value !== null &&
  'houseKey' in value &&
  'recordKey' in value &&
  'seq' in value &&
  typeof value.seq === 'number' &&
  'hash' in value;

const isCommand = (value: unknown): value is Command =>
  typeof value === 'object' && value !== null && 'commandId' in value && 'kind' in value;

export type Boxes = {
  readonly pinned: () => Pinned | null;
  readonly keepPinned: (pinned: Pinned) => void;
  readonly unsent: () => readonly Command[];
  /** False where the device would not take it. */
  readonly keepUnsent: (command: Command) => boolean;
  readonly forgetUnsent: (commandId: string) => void;
};

export const boxesIn = (box: Box): Boxes => ({
  pinned: () => {
    const value = parsed(box.getItem(PINNED));
    return isPinned(value) ? value : null;
  },
  keepPinned: (pinned) => {
    const before = parsed(box.getItem(PINNED));
    // Another tab may be further on; what the device has seen does not shrink.
    const isBehind =
      isPinned(before) && before.recordKey === pinned.recordKey && before.seq >= pinned.seq;
    if (!isBehind) attempt(() => box.setItem(PINNED, JSON.stringify(pinned)));
  },
  unsent: () =>
    Array.from({ length: box.length }, (_, index) => box.key(index))
      .filter((key) => key?.startsWith(UNSENT))
      .map((key) => parsed(box.getItem(key ?? '')))
      .filter(isCommand)
      .toSorted((one, other) => one.clientMs - other.clientMs),
  keepUnsent: (command) =>
    attempt(() => box.setItem(UNSENT + command.commandId, JSON.stringify(command))),
  forgetUnsent: (commandId) => box.removeItem(UNSENT + commandId),
});

const attempt = (write: () => void): boolean => {
  try {
    write();
    return true;
  } catch {
    return false;
  }
};

/** For a browser that keeps nothing: as long as the page lasts. */
export const passingBox = (): Box => {
  const map = new Map<string, string>();
  return {
    getItem: (key) => map.get(key) ?? null,
    setItem: (key, text) => void map.set(key, text),
    removeItem: (key) => void map.delete(key),
    key: (index) => [...map.keys()][index] ?? null,
    get length() {
      return map.size;
    },
  };
};
