export type {
  DocumentKind,
  DocumentStore,
  DocumentSummary,
  Save,
  StaleSave,
  StoredDocument,
} from './document-store.ts';
export { openSqliteStore } from './sqlite-store.ts';
