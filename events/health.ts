/** How the server says it is, on the wire: server and screens read it by the same words. */

/** `ownAuthority` and `houseCertificate` are HTTPS; `plain` is a trial on a closed network. */
export type ListeningMode = 'loopback' | 'ownAuthority' | 'houseCertificate' | 'plain';

export type CertificateState = {
  /** SHA-256 of what a tablet is made to trust: of the authority, or of the house's certificate. */
  readonly fingerprint: string;
  readonly until: string;
  readonly daysLeft: number;
  /** The house's own is renewed by the house; ours by the server. */
  readonly isDue: boolean;
};

/** What the record in hand says of itself. */
type Vitals = {
  /** Number of the last event of the record. */
  readonly seq: number;
  readonly houseKey: string;
  readonly recordKey: string;
  /** Whether it is read only, as a restored copy is until a person makes it the record. */
  readonly isReadOnly: boolean;
  /** Whether every commit is flushed to the disk before it is answered. */
  readonly isFlushed: boolean;
  readonly lastBackupAt: string | null;
};

export type Caution =
  | 'notFlushed'
  | 'diskFull'
  | 'diskLow'
  | 'readOnly'
  | 'certificateDue'
  | 'plainHttp'
  | 'noBackup';

export type Disk = { readonly freeBytes: number; readonly totalBytes: number };

export type Health = {
  /** `failing` where what is acknowledged may not be kept. */
  readonly is: 'well' | 'caution' | 'failing';
  readonly cautions: readonly Caution[];
  readonly time: string;
  readonly startedAt: string;
  readonly version: string;
  readonly build: string;
  readonly mode: ListeningMode;
  readonly signOffs: boolean;
  readonly addresses: readonly string[];
  readonly trustAddresses: readonly string[];
  readonly certificate: CertificateState | null;
  readonly database: 'demo' | 'house';
  readonly record: Vitals;
  readonly disk: Disk | null;
  /** Null where nothing is logged. */
  readonly logLevel: 'error' | 'warn' | 'info' | 'debug' | null;
};
