/** Refusals that the server itself raises; those of documents keep their own codes. */
export const SERVER_REFUSALS = {
  anotherDocument: {
    code: 'SRV-001',
    title: 'Another document',
    meaning: 'The id inside the document is not the one it is saved under.',
  },
  stale: {
    code: 'SRV-002',
    title: 'Somebody has saved since',
    meaning: 'The save began from an older revision than the newest; nothing was written.',
  },
  isAside: {
    code: 'SRV-003',
    title: 'Set aside',
    meaning: 'The document is set aside; it is taken back before anything is saved to it.',
  },
  houseInUse: {
    code: 'SRV-004',
    title: 'House with shows',
    meaning: 'A house is set aside after its shows are; each show that is in use is listed.',
  },
  recordStays: {
    code: 'SRV-005',
    title: 'Record of a house',
    meaning: 'How the sets of a house stand is set aside with the house, never by itself.',
  },
  tooMany: {
    code: 'SRV-006',
    title: 'Too many documents',
    meaning: 'A database keeps so many documents in use and set aside together, and no more.',
  },
  tooLarge: {
    code: 'SRV-007',
    title: 'Too large',
    meaning: 'What was sent is larger than any document that is read.',
  },
  notJson: {
    code: 'SRV-008',
    title: 'Not JSON',
    meaning: 'What was sent is not called JSON in its content type; nothing was read of it.',
  },
  isSoAlready: {
    code: 'SRV-009',
    title: 'So already',
    meaning: 'The document is already set aside, or already in use; nothing was noted.',
  },
  lastHouse: {
    code: 'SRV-010',
    title: 'Last house',
    meaning: 'The last house of a database stays in use, since every screen is about one.',
  },
  houseAside: {
    code: 'SRV-011',
    title: 'Show without its house',
    meaning: 'A show is taken back after its house is, so that it can be opened.',
  },
  inCall: {
    code: 'SRV-012',
    title: 'In use by a call',
    meaning:
      'A call is open on this document. How its sets stand is recorded in the call alone; it is ' +
      'saved, and may be set aside, when the call is closed.',
  },
  callIsOpen: {
    code: 'SRV-013',
    title: 'Call open already',
    meaning: 'One call is open at a time; the one that is open is closed first.',
  },
  noCall: {
    code: 'SRV-014',
    title: 'No call open',
    meaning: 'No call is open in this house, so there is nothing to close or to join.',
  },
  noSuchPost: {
    code: 'SRV-015',
    title: 'No such post',
    meaning: 'The house of the call has no such post.',
  },
  twoPeople: {
    code: 'SRV-016',
    title: 'Two people',
    meaning: 'Two posts whose word is needed together are held by two people on two devices.',
  },
  notSignedOff: {
    code: 'SRV-017',
    title: 'Not signed off',
    meaning: 'The post needs a person who is signed off for its task, or for a higher one.',
  },
  notAtHeadFly: {
    code: 'SRV-018',
    title: 'Head flyman only',
    meaning: 'Whoever stands as head flyman in this call, signed off for it, answers for others.',
  },
  deviceOfOther: {
    code: 'SRV-019',
    title: 'Id of another device',
    meaning: 'Another device joined this call under this id; each has one of its own.',
  },
} as const;
