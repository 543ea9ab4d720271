/** Why a person, a device or a program was not let in, or may not do what it asked. */
export const ACCESS_REFUSALS = {
  nobody: {
    code: 'ACC-001',
    title: 'Not signed in',
    meaning: 'The request says not who asks, or its sign-in has ended; nothing was done.',
  },
  role: {
    code: 'ACC-002',
    title: 'Not for this role',
    meaning: 'Who asks is known, and their role does not do this; nothing was done.',
  },
  noRight: {
    code: 'ACC-003',
    title: 'No right was laid down',
    meaning: 'The table of rights does not name this address, and what it does not name is shut.',
  },
  wrong: {
    code: 'ACC-004',
    title: 'Name or secret wrong',
    meaning: 'Name, passphrase, PIN or code do not go together. Which of them is not said.',
  },
  wait: {
    code: 'ACC-005',
    title: 'Tried too often',
    meaning: 'Too many failed attempts; the next is taken after the time that is said.',
  },
  pinLocked: {
    code: 'ACC-006',
    title: 'PIN locked',
    meaning: 'The PIN failed too often on this device; the passphrase opens it again.',
  },
  proofNeeded: {
    code: 'ACC-007',
    title: 'Passphrase or PIN again',
    meaning: 'This asks for the passphrase or PIN anew, since a device may lie about unattended.',
  },
  link: {
    code: 'ACC-008',
    title: 'Invitation not good',
    meaning: 'The invitation is used, withdrawn, too old, or was never given.',
  },
  nameTaken: {
    code: 'ACC-009',
    title: 'Name taken',
    meaning: 'Another person of this house has this name already.',
  },
  weakSecret: {
    code: 'ACC-010',
    title: 'Too easy to guess',
    meaning: 'The passphrase or PIN is too short or too plain.',
  },
  lastOwner: {
    code: 'ACC-011',
    title: 'Last owner',
    meaning: 'A house keeps at least one owner, or nobody could let anyone in.',
  },
  noSuch: {
    code: 'ACC-012',
    title: 'Nobody and nothing of that name',
    meaning: 'The person, device, invitation, sign-off or program is not there, or no longer.',
  },
  notAbove: {
    code: 'ACC-013',
    title: 'Not theirs to sign',
    meaning: 'A task is signed by one who holds a higher level, or by an owner; never for oneself.',
  },
  lapse: {
    code: 'ACC-014',
    title: 'Day of lapse',
    meaning: 'The day on which a sign-off lapses is missing, is none, is past, or is too late.',
  },
  busy: {
    code: 'ACC-015',
    title: 'Too many at once',
    meaning: 'Too many sign-ins are being checked at this moment; try again shortly.',
  },
  ownerMade: {
    code: 'ACC-016',
    title: 'Owner was made',
    meaning: 'The code for the owner was used, or is not the one of this start.',
  },
  tooMany: {
    code: 'ACC-017',
    title: 'Too many',
    meaning: 'A house keeps so many people, invitations and programs, and no more.',
  },
  foreignPage: {
    code: 'ACC-018',
    title: 'Page of another site',
    meaning:
      'The request comes from a page of another site, or by a name that is not the server’s.',
  },
  callCode: {
    code: 'ACC-019',
    title: 'Joining code not good',
    meaning: 'The code is used, too old, of another call, or was never given.',
  },
} as const;

export type AccessRefusalName = keyof typeof ACCESS_REFUSALS;

export type AccessRefusal = {
  readonly name: AccessRefusalName;
  readonly found: string;
  readonly accepted: string;
  /** Where waiting helps. */
  readonly waitMs?: number;
};
