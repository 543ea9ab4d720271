/** What an order of work takes for granted, said so that a crew can go and look. */
import type { House } from '#house';
import type { Assumption, CountOfKind } from '#orders';
import { unreachable } from '#outcome';
import { message, phrase } from '#texts';
import { sayMoment } from './say-moment.ts';
import { bricksWords, sayForce } from './say-standing.ts';

const galleryOf = (id: string, { galleries }: Pick<House, 'galleries'>): string =>
  galleries.find((gallery) => gallery.id === id)?.name ?? id;

const listed = (bricks: readonly CountOfKind[], house: House): string =>
  bricks.map(({ kind, count }) => bricksWords(count, kind, house)).join(', ');

const SAID_BARE = message(
  'Set {set} is taken to be bare on its low stop, pipe weight only, locked, in use and held by ' +
    'nothing else, because you said so and not because anybody recorded it: look and count first.',
);

const AS_PLANNED = message(
  'Set {set} is taken to hang as the show plans it, with the planned bricks on, and not as ' +
    'anybody recorded it: look and count first.',
);

const ON_STOP = message('The batten is recorded a hand past its stop; it is taken to stand on it.');

const AS_WRITTEN = message(
  'Set {set} stands as the order itself writes it, whatever the record says.',
);

const MASSES = message(
  'MASSES ARE TAKEN AS THEY ARE WRITTEN. WEIGH OR PULL-TEST FIRST: with every mass at its worst ' +
    'no order was found{short}.',
);

const IF_WEIGHED = message(
  'The restraint is asked for because masses may be at their worst. As they are written none is ' +
    'needed: weigh or pull-test, enter what was found, and ask again.',
);

/** A finished sentence in the words of the house. */
export const sayAssumption = (assumption: Assumption, house: House): string => {
  switch (assumption.is) {
    case 'recorded': {
      const { set, at, by } = assumption;
      return phrase(house, 'Set {set} stands as recorded {at} by {by}: look first.', {
        set,
        at: sayMoment(at, house),
        by,
      });
    }
    case 'onStop':
      return phrase(house, ON_STOP);
    case 'saidBare':
      return phrase(house, SAID_BARE, { set: assumption.set });
    case 'asPlanned':
      return phrase(house, AS_PLANNED, { set: assumption.set });
    case 'asTheOrderWrites':
      return phrase(house, AS_WRITTEN, { set: assumption.set });
    case 'bricksBack': {
      const { set, bricks } = assumption;
      const names = { set, bricks: listed(bricks, house) };
      return phrase(
        house,
        'The record has {bricks} on the arbor of set {set}: taken to lie where the order takes ' +
          'them. Bring them there and count them first.',
        names,
      );
    }
    case 'stockNotCounted':
      return phrase(house, '{gallery}: no loose bricks are counted there, so none are taken.', {
        gallery: galleryOf(assumption.gallery, house),
      });
    case 'stockKept': {
      const { gallery, kept } = assumption;
      const each = kept.map((held) => `${listed([held], house)} (${held.for})`).join(', ');
      return phrase(house, '{gallery}: kept for other work and not taken: {kept}.', {
        gallery: galleryOf(gallery, house),
        kept: each,
      });
    }
    case 'steelWithPipeWeight':
      return phrase(house, 'Set {set} is to hang on steel with pipe weight only, no show bricks.', {
        set: assumption.set,
      });
    case 'noRestraintIfWeighed':
      return phrase(house, IF_WEIGHED);
    case 'massesAsWritten': {
      const { byN } = assumption;
      const short =
        byN === null ? '' : phrase(house, ', short by {by}', { by: sayForce(byN, house, 'up') });
      return phrase(house, MASSES, { short });
    }
    default:
      return unreachable(assumption);
  }
};
