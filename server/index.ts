export { type DatabaseName, type Databases, openDatabases } from './databases.ts';
export { demoDocuments } from './demo.ts';
export { type AppParts, buildApp } from './http/app.ts';
