/** Every reason for which a request of a call is not taken, beside the rules. No code is reused. */
export const CALL_REFUSALS = {
  noCall: {
    code: 'CAL-101',
    title: 'No such call is open',
    meaning: 'What is asked belongs to a call that is not open. Join the call that is open now.',
  },
  notYourPost: {
    code: 'CAL-102',
    title: 'Not your post',
    meaning: 'This is said from a post that you have not taken on this device. Join it first.',
  },
  notSignedOff: {
    code: 'CAL-103',
    title: 'Not signed off for this',
    meaning: 'The post needs a task that you are not signed off for, and nobody answers for you.',
  },
  nothingWaits: {
    code: 'CAL-104',
    title: 'Nothing waits for this word',
    meaning: 'What this answers is not asked any more, or was done with. Look how the set stands.',
  },
  onePerson: {
    code: 'CAL-105',
    title: 'One person is not two',
    meaning: 'The second word is of another person on another device, or of a name on paper.',
  },
  countMissing: {
    code: 'CAL-106',
    title: 'No count given',
    meaning: 'Bricks or items were changed: count what is on the arbor, and give the number.',
  },
  overrideShort: {
    code: 'CAL-107',
    title: 'The override does not name the rule',
    meaning: 'An override names every rule that it covers, with a reason in words.',
  },
  planBroken: {
    code: 'CAL-108',
    title: 'The order breaks a rule',
    meaning: 'An order is taken only where the rules find nothing in any of its steps.',
  },
  notHeadFly: {
    code: 'CAL-109',
    title: 'The head flyman says this',
    meaning: 'Only whoever has taken the post of head flyman says this.',
  },
  stopStands: {
    code: 'CAL-110',
    title: 'Whoever said stop has not agreed',
    meaning: 'Whoever said stop agrees first, or another stands in for them by name with a reason.',
  },
  noSuchTag: {
    code: 'CAL-111',
    title: 'No such tag on the set',
    meaning: 'The number is not that of the tag on this set. Read it off the tag.',
  },
  noSuchNote: {
    code: 'CAL-112',
    title: 'No such note waits',
    meaning: 'No note of paper with this number waits on the set.',
  },
} as const;

export type CallRefusalName = keyof typeof CALL_REFUSALS;
