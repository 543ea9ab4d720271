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
} as const;

export type LiveRefusalName = keyof typeof LIVE_REFUSALS;
