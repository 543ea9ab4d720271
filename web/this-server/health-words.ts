/** What the server says of itself, in words. */

import type { Caution, Health, ListeningMode } from '#events';
import { sayMoment } from '#sheets';
import { message, phrase, phraseCount, type Voice } from '#texts';

export const CAUTION_WORDS: Readonly<
  Record<Caution, { readonly title: string; readonly says: string; readonly isDanger: boolean }>
> = {
  notFlushed: {
    title: message('the record is not flushed to the disk'),
    says: message(
      'A power cut could lose what was acknowledged. Stop work on this server, and have its disk ' +
        'and its start looked at.',
    ),
    isDanger: true,
  },
  diskFull: {
    title: message('the disk is full'),
    says: message('Soon nothing more is recorded. Make room on the disk of the server now.'),
    isDanger: true,
  },
  diskLow: {
    title: message('the disk is filling up'),
    says: message('Make room on the disk of the server before the next fit-up.'),
    isDanger: false,
  },
  readOnly: {
    title: message('this database is not the record'),
    says: message(
      'It was restored, copied or moved, and is read only until a person makes it the record.',
    ),
    isDanger: false,
  },
  certificateDue: {
    title: message('the certificate of the house lapses soon'),
    says: message('The house renews it: put the new files in place of the old ones.'),
    isDanger: false,
  },
  plainHttp: {
    title: message('this server is on plain HTTP'),
    says: message(
      'Anybody on its network can read and change what is sent. It is for trials on a closed ' +
        'network, and nothing can be signed off.',
    ),
    isDanger: false,
  },
  noBackup: {
    title: message('there is no backup of the last seven days'),
    says: message('Make one, to another disk, and see to it that one is made each night.'),
    isDanger: false,
  },
};

const MODE_WORDS: Readonly<Record<ListeningMode, string>> = {
  loopback: message('this machine only'),
  ownAuthority: message('the network of the house, HTTPS by its own authority'),
  houseCertificate: message('the network of the house, HTTPS by a certificate of the house'),
  plain: message('the network of the house, plain HTTP'),
};

const STATE_WORDS: Readonly<Record<Health['is'], string>> = {
  well: message('It answers, and it has nothing to say against itself.'),
  caution: message('It answers. Somebody has to see to what stands below.'),
  failing: message('It answers, but what is recorded may be lost. See below.'),
};

export const stateWords = (health: Health, voice: Voice): string =>
  phrase(voice, STATE_WORDS[health.is]);

const GB = 1e9;
const MB = 1e6;

/** Whole numbers: nobody decides by a tenth of a gigabyte. */
const sizeWords = (bytes: number, voice: Voice): string =>
  bytes >= 10 * GB
    ? phrase(voice, '{size} GB', { size: Math.floor(bytes / GB) })
    : phrase(voice, '{size} MB', { size: Math.floor(bytes / MB) });

const diskWords = (disk: Health['disk'], voice: Voice): string =>
  disk === null
    ? phrase(voice, 'not known')
    : phrase(voice, '{free} free of {total}', {
        free: sizeWords(disk.freeBytes, voice),
        total: sizeWords(disk.totalBytes, voice),
      });

const recordWords = ({ record }: Health, voice: Voice): string => {
  const events = phraseCount(voice, record.seq, ['{count} event', '{count} events']);
  return record.isReadOnly
    ? phrase(voice, '{events}; read only', { events })
    : phrase(voice, '{events}; each is flushed to the disk before it is answered', { events });
};

/** Groups of four, which a person can read out. */
export const inGroups = (text: string): string =>
  (text.replace(/[^0-9A-Za-z]/g, '').match(/.{1,4}/g) ?? []).join(' ');

export type Row = { readonly key: string; readonly head: string; readonly says: string };

const row = (key: string, head: string, says: string): Row => ({ key, head, says });

const certificateRow = ({ certificate }: Health, voice: Voice): readonly Row[] => {
  if (certificate === null) return [];
  const left = phraseCount(
    voice,
    certificate.daysLeft,
    ['until {moment}, {count} day left', 'until {moment}, {count} days left'],
    { moment: sayMoment(certificate.until, voice) },
  );
  return [row('certificate', phrase(voice, 'Certificate of the server'), left)];
};

const signOffWords = ({ signOffs }: Health, voice: Voice): string =>
  signOffs
    ? phrase(voice, 'on, for who has signed in and may')
    : phrase(voice, 'off: over plain HTTP anybody could sign as another');

const pageWords = ({ build }: Health, ownBuild: string, voice: Voice): string =>
  ownBuild === build
    ? phrase(voice, 'of the same build')
    : phrase(voice, 'of another build, {build}: load it again', { build: ownBuild });

/** What it is, and which record it keeps. */
const recordRows = (health: Health, voice: Voice): readonly Row[] => {
  const { record, database, mode } = health;
  const inHand = database === 'demo' ? phrase(voice, 'the demo') : phrase(voice, 'the house');
  const backup =
    record.lastBackupAt === null
      ? phrase(voice, 'none was made')
      : sayMoment(record.lastBackupAt, voice);
  return [
    row('mode', phrase(voice, 'It is reached from'), phrase(voice, MODE_WORDS[mode])),
    row('signOffs', phrase(voice, 'Sign-offs'), signOffWords(health, voice)),
    row('house', phrase(voice, 'Identity of the house'), inGroups(record.houseKey)),
    row('record', phrase(voice, 'Identity of the record'), inGroups(record.recordKey)),
    row('database', phrase(voice, 'Database'), inHand),
    row('events', phrase(voice, 'Record'), recordWords(health, voice)),
    row('backup', phrase(voice, 'Last backup'), backup),
    row('disk', phrase(voice, 'Disk'), diskWords(health.disk, voice)),
  ];
};

export const rowsOf = (health: Health, ownBuild: string, voice: Voice): readonly Row[] => {
  const { version, build, logLevel } = health;
  const program = phrase(voice, 'Counterpoise {version}, build {build}', { version, build });
  const logs =
    logLevel === null
      ? phrase(voice, 'nothing')
      : phrase(voice, '{level} and graver', { level: logLevel });
  return [
    ...recordRows(health, voice),
    ...certificateRow(health, voice),
    row('build', phrase(voice, 'Server'), program),
    row('page', phrase(voice, 'This page'), pageWords(health, ownBuild, voice)),
    row('time', phrase(voice, 'Clock of the server'), sayMoment(health.time, voice)),
    row('started', phrase(voice, 'Running since'), sayMoment(health.startedAt, voice)),
    row('log', phrase(voice, 'It logs'), logs),
  ];
};
