/** Why the server does not start on the LAN; it never falls back to something weaker by itself. */
export const LAN_REFUSALS = {
  settings: {
    code: 'LAN-001',
    title: 'Settings of the LAN',
    meaning: 'What is set for the LAN is not understood, so the server does not start.',
  },
  certificate: {
    code: 'LAN-002',
    title: 'Certificate of the house',
    meaning:
      'The certificate or key that the house gives cannot be read, or do not belong together.',
  },
  lapsed: {
    code: 'LAN-003',
    title: 'Certificate out of date',
    meaning: 'The certificate that the house gives is not valid today; no tablet would take it.',
  },
  authority: {
    code: 'LAN-004',
    title: 'Authority damaged',
    meaning:
      'A part of the own authority is missing or unreadable. It is not made anew unasked, since ' +
      'every tablet would have to trust the new one.',
  },
  name: {
    code: 'LAN-005',
    title: 'Name outside the authority',
    meaning: 'The own authority was made for other names; it cannot vouch for this one.',
  },
} as const;
