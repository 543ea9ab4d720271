/**
 * What each route is for and what it answers. A route that is not here fails a test: nobody can
 * use what is not described.
 */
type Answer =
  /** A shape by its name. */
  | string
  | { readonly media: string }
  /** A document: which kind it is stands in it. */
  | { readonly document: true };

type RouteWords = {
  readonly summary: string;
  readonly answer: Answer;
  /** Statuses of the problems that this route answers beside those that all do. */
  readonly problems?: readonly number[];
  readonly detail?: string;
  /** A body that the route reads for itself, by the name of its shape. */
  readonly body?: string;
};

const PDF = { media: 'application/pdf' } as const;
const DOCUMENT = { document: true } as const;
const STALE =
  'A save says which revision it began from. Where another was saved since, it is refused with ' +
  '409 and the current one, and nothing changes.';

export const ROUTE_WORDS: Readonly<Record<string, RouteWords>> = {
  'GET /api/health': {
    summary: 'How this server is, and which house it is',
    detail:
      'Answers 200 also where something is wrong: read `is`. It holds no secret and needs no name.',
    answer: 'Health',
  },
  'GET /api/openapi.json': { summary: 'This description', answer: 'Description' },
  'GET /api/database': { summary: 'Which database is in hand', answer: 'DatabaseInHand' },
  'POST /api/database': {
    summary: 'Take the demo or the house in hand, and begin a house',
    answer: 'DatabaseInHand',
    problems: [422],
  },
  'GET /api/documents': { summary: 'All documents in use', answer: 'Documents' },
  'GET /api/documents-aside': { summary: 'Documents set aside', answer: 'DocumentsAside' },
  'GET /api/documents/:id': {
    summary: 'One document as it is now',
    answer: DOCUMENT,
    problems: [404],
  },
  'GET /api/documents/:id/revisions': {
    summary: 'All revisions of a document, the newest first',
    answer: 'Revisions',
    problems: [404],
  },
  'GET /api/documents/:id/revisions/:revision': {
    summary: 'A document as it was at a revision',
    answer: DOCUMENT,
    problems: [404],
  },
  'PUT /api/documents/:id': {
    summary: 'Save a document as its next revision',
    detail: STALE,
    answer: 'DocumentSummary',
    problems: [409, 422],
  },
  'POST /api/documents/:id/aside': {
    summary: 'Set a document aside, or take it back',
    answer: 'Shelved',
    problems: [404, 409],
  },
  'GET /api/sheets': { summary: 'Which sheets there are', answer: 'Sheets', problems: [404, 422] },
  'GET /api/sheet.pdf': { summary: 'A sheet to print', answer: PDF, problems: [404, 422] },
  'GET /api/sheet.csv': {
    summary: 'The table of a sheet',
    answer: { media: 'text/csv' },
    problems: [404, 422],
  },
  'GET /api/sheet-code': {
    summary: 'Whether a printed sheet is still the current one, by its code',
    answer: 'SheetCode',
    problems: [404, 422],
  },
  'GET /api/self-check': {
    summary: 'What the server found when it reran its validation cases',
    answer: 'SelfCheck',
  },
  'GET /api/self-check.pdf': { summary: 'The same, to print', answer: PDF },
  'GET /api/session': { summary: 'Who asks', answer: 'Session' },
  'POST /api/session': {
    summary: 'Sign in by name and passphrase',
    answer: 'Someone',
    problems: [429],
  },
  'POST /api/session/by-pin': {
    summary: 'Sign in by PIN on a known device',
    answer: 'Someone',
    problems: [429],
  },
  'DELETE /api/session': { summary: 'Sign out', answer: 'Nothing' },
  'POST /api/session/proof': {
    summary: 'Give passphrase or PIN again, for what asks for it',
    answer: 'Nothing',
    problems: [429],
  },
  'PUT /api/session/pin': {
    summary: 'Set a PIN on this device',
    answer: 'Nothing',
    problems: [422],
  },
  'DELETE /api/session/pin': {
    summary: 'Take the PIN off this device',
    answer: 'Nothing',
    problems: [404],
  },
  'PUT /api/session/passphrase': {
    summary: 'Change the own passphrase',
    answer: 'Nothing',
    problems: [422, 429],
  },
  'GET /api/session/devices': { summary: 'Where the own name is signed in', answer: 'Devices' },
  'DELETE /api/session/devices': { summary: 'Sign out everywhere but here', answer: 'SignedOut' },
  'DELETE /api/session/devices/:session': {
    summary: 'Sign out on one device',
    answer: 'Nothing',
    problems: [404],
  },
  'POST /api/people/owner': {
    summary: 'Become the owner of a house that has none',
    answer: 'Someone',
    problems: [409, 422, 429],
  },
  'POST /api/invitation': {
    summary: 'Look at an invitation',
    answer: 'InvitationFound',
    problems: [404, 429],
  },
  'POST /api/invitation/join': {
    summary: 'Take an invitation up',
    answer: 'Someone',
    problems: [404, 409, 422, 429],
  },
  'GET /api/people': { summary: 'People and what they are signed off for', answer: 'People' },
  'PUT /api/people/:id/role': {
    summary: 'Give a person another role',
    answer: 'Person',
    problems: [404, 409],
  },
  'DELETE /api/people/:id': {
    summary: 'Take a person out',
    answer: 'Nothing',
    problems: [404, 409],
  },
  'POST /api/people/:id/new-passphrase': {
    summary: 'Invite a person to give a new passphrase',
    answer: 'InvitationMade',
    problems: [404, 409],
  },
  'POST /api/people/:id/competences': {
    summary: 'Sign a person off for a task',
    answer: 'Competence',
    problems: [404, 422],
  },
  'DELETE /api/people/:id/competences/:competence': {
    summary: 'Revoke a sign-off for a task, at once',
    answer: 'Nothing',
    problems: [404],
  },
  'GET /api/people/:id/devices': { summary: 'Where a person is signed in', answer: 'Devices' },
  'DELETE /api/people/:id/devices': {
    summary: 'Sign a person out everywhere',
    answer: 'SignedOut',
  },
  'DELETE /api/people/:id/devices/:session': {
    summary: 'Sign a person out on one device',
    answer: 'Nothing',
    problems: [404],
  },
  'PUT /api/people/this-machine': {
    summary: 'Whether the machine itself needs a name',
    answer: 'ThisMachine',
  },
  'GET /api/people/invitations': { summary: 'Open invitations', answer: 'Invitations' },
  'POST /api/people/invitations': {
    summary: 'Invite somebody with a role',
    answer: 'InvitationMade',
    problems: [409],
  },
  'DELETE /api/people/invitations/:invitation': {
    summary: 'Withdraw an invitation',
    answer: 'Nothing',
    problems: [404],
  },
  'GET /api/tokens': { summary: 'Programs that may ask', answer: 'Programs' },
  'POST /api/tokens': {
    summary: 'Let a program ask, with a role',
    answer: 'ProgramMade',
    problems: [409],
  },
  'DELETE /api/tokens/:token': {
    summary: 'Let a program ask no more',
    answer: 'Nothing',
    problems: [404],
  },
  'GET /api/events': {
    summary: 'The record after a number: a page of it, or a stream',
    detail:
      'With `Accept: text/event-stream` the events come as they happen, each with its number as ' +
      'id, and a heartbeat between them. Without `after` the stream begins at the end.',
    answer: 'Events',
  },
  'POST /api/commands': {
    summary: 'Ask for something to be recorded',
    detail:
      'The same `commandId` is answered the same for ever, so a lost answer is asked for again ' +
      'by sending the command again. With another body it is refused.',
    body: 'Command',
    answer: 'CommandAnswer',
    problems: [409, 422, 503, 507],
  },
  'GET /api/commands/:commandId': {
    summary: 'What was answered to a command',
    answer: 'StoredAnswer',
    problems: [404],
  },
  'POST /api/commands/:commandId/give-up': {
    summary: 'Give a command up',
    detail:
      'For a command that was not answered: what became of it, or, from now on, that it is never ' +
      'recorded, should it still be on its way.',
    answer: 'CommandAnswer',
    problems: [503, 507],
  },
  'GET /api/call': {
    summary: 'The call that is open, and from which event it is folded',
    detail: 'A device asks for the events from that number on, and adds them up for itself.',
    answer: 'Call',
  },
  'POST /api/call': {
    summary: 'Open a call on a house, a show and how the sets stand',
    detail:
      'For a person signed off as head flyman or lead, who takes that post by it; never for a ' +
      'program. While it is open, how the sets stand is recorded in it alone.',
    answer: 'Call',
    problems: [404, 409, 422, 503, 507],
  },
  'DELETE /api/call': {
    summary: 'Close the call, and save how the sets stand',
    answer: 'Call',
    problems: [409, 503, 507],
  },
  'POST /api/call/codes': {
    summary: 'A joining code for one post, good once and for ten minutes',
    detail:
      'With `answersFor` the head flyman of the call answers by name for whoever joins by it, ' +
      'where their own sign-off does not reach.',
    answer: 'CallCode',
    problems: [409, 422],
  },
  'POST /api/call/join': {
    summary: 'Take a post in the open call by a code',
    answer: 'PostTaken',
    problems: [404, 409, 429, 503, 507],
  },
  'GET /api/said': { summary: 'Notes and sign-offs on something, or the newest', answer: 'Said' },
};
