export { backUp, bringInAlone, lastBackupAt, restore } from './backup.ts';
export { checkInBackground } from './check-in-background.ts';
export { NotOpened } from './database-file.ts';
export type {
  DocumentAside,
  DocumentKind,
  DocumentStore,
  DocumentSummary,
  Hand,
  Save,
  Shelving,
  StaleSave,
  StoredDocument,
} from './document-store.ts';
export { type HouseRecord, type MakeRecord, openHouseRecord } from './house-record.ts';
export type { Identity } from './identity.ts';
export { openRecordFile } from './record-file.ts';
export { takeOut } from './take-out.ts';
export { inTransaction, RecordFault } from './transaction.ts';
export { verifyRecord } from './verify-record.ts';
