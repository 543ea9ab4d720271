export type {
  DocumentAside,
  DocumentKind,
  DocumentStore,
  DocumentSummary,
  Save,
  Shelving,
  StaleSave,
  StoredDocument,
} from './document-store.ts';
export { openSqliteStore } from './sqlite-store.ts';
