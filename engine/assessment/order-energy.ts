import { releasable, type Way } from '#motion';
import { type Joules, type Metres, metres } from '#quantities';
import type { OrderPhysics, Standing } from '#state';

/** What a set would set free from where it stands, if all that holds it gave way at once. */
export type SetFree = {
  readonly energy: Joules;
  /** Null where it is in balance. */
  readonly way: Way | null;
  /** Where it would come to rest. */
  readonly end: Metres;
};

/**
 * Energy free at one moment of an order of work, the worst of both sides where the height itself
 * is a contact.
 *
 * Source  work and energy along the balance curve (`releasable`)
 * Omits   what rests on the deck or on horses with its picks taut: it counts nothing here, and
 *         frees its own share if its rest gives way (more)
 */
export const setFreeAt = (physics: OrderPhysics, standing: Standing): SetFree => {
  const { energy, starts } = releasable({
    curve: physics.curve(standing).map(({ heightM, belowN, aboveN, contact }) => ({
      height: heightM,
      below: belowN,
      above: aboveN,
      contact: { low: contact.lowN, high: contact.highN },
    })),
    lowStop: physics.lowStop.heightM,
    highStop: physics.highStop.heightM,
    height: standing.height,
  });
  const worst = starts.find(({ free }) => free.most.energy === energy)?.free ?? null;
  const end = worst === null ? metres(standing.height) : worst.end.height;
  return { energy, way: worst?.way ?? null, end };
};
