/** Every reason for which a step cannot be replayed at all. A code is never reused. */
export const REFUSALS = {
  unknownItem: {
    code: 'ORD-101',
    title: 'No such item',
    meaning: 'An item of an order is one that hangs, or is to hang, on this set.',
  },
  wrongPhase: {
    code: 'ORD-102',
    title: 'The item is elsewhere',
    meaning: 'What is attached is away or beside; what is released, set down or taken up is on.',
  },
  unknownKind: {
    code: 'ORD-103',
    title: 'No such brick',
    meaning: 'A brick is of a kind that the house has.',
  },
  notOnTop: {
    code: 'ORD-104',
    title: 'Not on top of the stack',
    meaning: 'Only the uppermost plate can be taken off, and then the next.',
  },
  badCount: {
    code: 'ORD-105',
    title: 'No number of bricks',
    meaning: 'Bricks are handled in whole numbers from one up to a thousand.',
  },
  unknownGallery: {
    code: 'ORD-106',
    title: 'No such gallery',
    meaning: 'Bricks are handled from a loading gallery of the house.',
  },
  offTravel: {
    code: 'ORD-107',
    title: 'Off the travel',
    meaning: 'A batten is somewhere from its low stop to its high stop.',
  },
  notRigged: {
    code: 'ORD-108',
    title: 'Not rigged',
    meaning: 'Only a restraint that is in the register can be taken off.',
  },
  onSteel: {
    code: 'ORD-109',
    title: 'On the steel or off it',
    meaning: 'Only a set in use is hung on steel, and only a dead-hung one is taken off it.',
  },
  badPull: {
    code: 'ORD-110',
    title: 'No pull',
    meaning: 'A pull is a force of zero or more.',
  },
  notOfPair: {
    code: 'ORD-111',
    title: 'Not the two of the pair',
    meaning: 'A step for a pair is for one of its two sets, or a flight of each of them once.',
  },
} as const;

export type OrderRefusal = keyof typeof REFUSALS;
