/** Why a command that was understood is not taken from who sent it. */
export const LIVE_REFUSALS = {
  notAllowed: {
    code: 'LIV-001',
    title: 'Not for this role',
    meaning: 'Your role does not do this here; nothing was recorded.',
  },
  signOffsOff: {
    code: 'LIV-002',
    title: 'Sign-offs are off',
    meaning: 'Without HTTPS anybody on the network could sign as another, so nobody signs here.',
  },
  proveAnew: {
    code: 'LIV-003',
    title: 'Say who you are',
    meaning: 'A sign-off needs your PIN or passphrase within the last minute; give it and sign.',
  },
  anotherRole: {
    code: 'LIV-004',
    title: 'Another role',
    meaning: 'The role in the sign-off is not yours; nothing was recorded.',
  },
  noLeaveHere: {
    code: 'LIV-005',
    title: 'No leave without HTTPS',
    meaning:
      'Without HTTPS anybody on the network could speak as another, so no leave is given here. ' +
      'Work from paper; what you report, and STOP, is recorded.',
  },
  anotherCall: {
    code: 'LIV-006',
    title: 'No such call',
    meaning: 'This call is not open here; nothing was recorded.',
  },
  notYourPost: {
    code: 'LIV-007',
    title: 'Not your post',
    meaning: 'On this device you have not taken this post; join with a code for it.',
  },
  nobodyAnswers: {
    code: 'LIV-008',
    title: 'Nobody answers',
    meaning: 'Whoever answered for you may do so no longer; the head flyman gives a new code.',
  },
  notRead: {
    code: 'LIV-009',
    title: 'Documents of the call',
    meaning: 'The documents of this call cannot be read here, so no leave is given from them.',
  },
} as const;

export type LiveRefusalName = keyof typeof LIVE_REFUSALS;
