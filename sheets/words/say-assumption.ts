/** What an order of work takes for granted, said so that a crew can go and look. */
import type { House } from '#house';
import type { Assumption, CountOfKind } from '#orders';
import { unreachable } from '#outcome';
import { filled } from './fill-words.ts';
import { sayMoment } from './say-moment.ts';
import { bricksWords, sayForce } from './say-standing.ts';

const galleryOf = (id: string, { galleries }: Pick<House, 'galleries'>): string =>
  galleries.find((gallery) => gallery.id === id)?.name ?? id;

const listed = (bricks: readonly CountOfKind[], house: House): string =>
  bricks.map(({ kind, count }) => bricksWords(count, kind, house)).join(', ');

const SAID_BARE =
  'Set {set} is taken to be bare on its low stop, pipe weight only, locked, in use and held by ' +
  'nothing else, because you said so and not because anybody recorded it: look and count first.';

const AS_PLANNED =
  'Set {set} is taken to hang as the show plans it, with the planned bricks on, and not as ' +
  'anybody recorded it: look and count first.';

const MASSES =
  'MASSES ARE TAKEN AS THEY ARE WRITTEN. WEIGH OR PULL-TEST FIRST: with every mass at its worst ' +
  'no order was found{short}.';

const IF_WEIGHED =
  'The restraint is asked for because masses may be at their worst. As they are written none is ' +
  'needed: weigh or pull-test, enter what was found, and ask again.';

/** A finished sentence in the words of the house. */
export const sayAssumption = (assumption: Assumption, house: House): string => {
  const say = (sentence: string, names: Readonly<Record<string, string>> = {}): string =>
    filled(sentence, house, names);
  switch (assumption.is) {
    case 'recorded': {
      const { set, at, by } = assumption;
      return say('Set {set} stands as recorded {at} by {by}: look first.', {
        set,
        at: sayMoment(at),
        by,
      });
    }
    case 'onStop':
      return say('The batten is recorded a hand past its stop; it is taken to stand on it.');
    case 'saidBare':
      return say(SAID_BARE, { set: assumption.set });
    case 'asPlanned':
      return say(AS_PLANNED, { set: assumption.set });
    case 'asTheOrderWrites': {
      const { set } = assumption;
      return say('Set {set} stands as the order itself writes it, whatever the record says.', {
        set,
      });
    }
    case 'bricksBack': {
      const { set, bricks } = assumption;
      const names = { set, bricks: listed(bricks, house) };
      return say(
        'The record has {bricks} on the arbor of set {set}: taken to lie where the order takes ' +
          'them. Bring them there and count them first.',
        names,
      );
    }
    case 'stockNotCounted':
      return say('{gallery}: no loose bricks are counted there, so none are taken.', {
        gallery: galleryOf(assumption.gallery, house),
      });
    case 'stockKept': {
      const { gallery, kept } = assumption;
      const each = kept.map((held) => `${listed([held], house)} (${held.for})`).join(', ');
      return say('{gallery}: kept for other work and not taken: {kept}.', {
        gallery: galleryOf(gallery, house),
        kept: each,
      });
    }
    case 'steelWithPipeWeight':
      return say('Set {set} is to hang on steel with pipe weight only, no show bricks.', {
        set: assumption.set,
      });
    case 'noRestraintIfWeighed':
      return say(IF_WEIGHED);
    case 'massesAsWritten': {
      const { byN } = assumption;
      const short = byN === null ? '' : `, short by ${sayForce(byN, house, 'up')}`;
      return say(MASSES, { short });
    }
    default:
      return unreachable(assumption);
  }
};
