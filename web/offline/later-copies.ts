/** The copies of this device, whose store is opened only when one is read or there is time. */
import type { Copy, CopyBox } from '../keeping/copies.ts';
import { whenIdle } from './when-idle.ts';

let next: Copy | null = null;

const write = async (): Promise<void> => {
  const copy = next;
  next = null;
  if (copy === null) return;
  const { keepCopy } = await import('./copy-store.ts');
  await keepCopy(copy);
};

/** A device that keeps nothing has nothing to show; the page works as before. */
const NOTHING = (): null => null;

export const laterCopies: CopyBox = {
  last: () => import('./copy-store.ts').then(({ lastCopy }) => lastCopy()).catch(NOTHING),
  keep: (copy) => {
    const isWaiting = next !== null;
    // Only the last counts.
    next = copy;
    if (!isWaiting) whenIdle(() => void write().catch(NOTHING));
  },
};
