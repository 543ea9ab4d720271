/** A step in a few words, for the head of a column or a row. */

import { unreachable } from '#outcome';
import type { Step } from '#state';
import { message } from '#texts';
import { filled } from './fill-words.ts';
import { type FromHeight, isIn } from './move-deeds.ts';
import { height } from './say-set.ts';
import {
  bricksWords,
  galleryName,
  type OrderWords,
  type PlaceWords,
  restraintName,
  zoneName,
} from './say-standing.ts';

/** As much of a step and of words as a title says: an order that is worked need not be replayed. */
export type TitledStep = FromHeight & { readonly step: Step };
export type TitleWords = Pick<OrderWords, 'nameOf'> & PlaceWords;

const sentenceFor = (step: Step, between: FromHeight): string => {
  switch (step.act) {
    case 'attach':
      return message('Tie on {item}');
    case 'takeUp':
      return message('Take up {item}');
    case 'rest':
      return message('Rest {item}');
    case 'release':
      return message('Untie {item}');
    case 'add':
      return message('Put on {bricks}, {gallery}');
    case 'remove':
      return message('Take off {bricks}, {gallery}');
    case 'fly':
      return isIn(step, between) ? message('In to {to}') : message('Out to {to}');
    case 'rig':
      return message('Rig the {restraint}');
    case 'unrig':
      return message('Take off the {restraint}');
    case 'hangOnSteel':
      return message('Hang it on steel');
    case 'takeOffSteel':
      return message('Take it off the steel');
    case 'close':
      return message('Close {zone}');
    case 'reopen':
      return message('Reopen {zone}');
    case 'ease':
      return message('Ease it off its stop');
    default:
      return unreachable(step);
  }
};

export const stepTitle = (between: TitledStep, words: TitleWords): string => {
  const { step } = between;
  const { house } = words;
  return filled(sentenceFor(step, between), house, {
    ...('item' in step ? { item: words.nameOf(step.item) } : {}),
    ...('gallery' in step
      ? {
          bricks: bricksWords(step.count, step.kind, house),
          gallery: galleryName(step.gallery, words),
        }
      : {}),
    ...('to' in step ? { to: height(step.to, house) } : {}),
    ...('restraint' in step ? { restraint: restraintName(step.restraint, house) } : {}),
    ...('zone' in step ? { zone: zoneName(step.zone, words) } : {}),
  });
};
