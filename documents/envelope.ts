/** The outside of every document: what it is, and in which version of its form it is written. */
import type { Faults } from './faults.ts';
import type { JsonObject } from './json.ts';
import { describe, isObject } from './json.ts';
import { CURRENT_VERSION, migrate, oldestVersion } from './migrations.ts';
import { nearestName } from './nearest-name.ts';
import { only } from './shape/collections.ts';
import { leftOut, needed } from './shape/object.ts';
import type { Shape } from './shape/shape.ts';
import { name } from './shape/words.ts';

export const DOCUMENT_KINDS = ['house', 'show', 'state', 'order'] as const;
export type DocumentKind = (typeof DOCUMENT_KINDS)[number];

const formatOf = (kind: DocumentKind) => `counterpoise-${kind}` as const;

const currentVersion: Shape<number> = {
  schema: { const: CURRENT_VERSION },
  standIn: CURRENT_VERSION,
  read: () => CURRENT_VERSION,
};

/** The fields of the outside, for the shape of a document that has been opened. */
export const envelopeOf = (kind: DocumentKind) => ({
  $schema: leftOut(name, 'Where an editor finds the schema of this document.'),
  format: needed(only(formatOf(kind)), `Says that it is a ${kind}.`),
  version: needed(currentVersion, 'Version of the form in which it is written.'),
});

/**
 * The document in the current version, migrated where it is older. Undefined, with the reasons in
 * `faults`, where it is another document or in a version that this program cannot read.
 */
export const openDocument = (
  kind: DocumentKind,
  value: unknown,
  faults: Faults,
): JsonObject | undefined => {
  if (!isObject(value)) {
    faults.refuse('rootNotObject', '', {
      found: describe(value),
      accepted: `a ${kind} document: { "format": "${formatOf(kind)}", "version": 1, … }`,
    });
    return undefined;
  }
  const isOurs = checkFormat(kind, value, faults);
  const version = readVersion(kind, value, faults);
  if (!isOurs || version === undefined) return undefined;
  return migrate(kind, version, value as JsonObject);
};

type Outside = Readonly<Record<string, unknown>>;

const checkFormat = (kind: DocumentKind, value: Outside, faults: Faults): boolean => {
  const format = formatOf(kind);
  const written = value['format'];
  if (written === format) return true;
  const accepted = `"format": "${format}"`;
  if (!Object.hasOwn(value, 'format')) {
    faults.refuse('formatMissing', 'format', { found: `nothing; ${looks(value)}`, accepted });
    return false;
  }
  faults.refuse('formatOther', 'format', {
    found: `${describe(written)}; ${looks(value)}`,
    accepted,
  });
  return false;
};

const MARKS: Readonly<Record<DocumentKind, readonly string[]>> = {
  house: ['stage', 'lineSets', 'setTypes', 'brickKinds'],
  show: ['hangs', 'cues', 'keptEmpty'],
  state: ['sets', 'galleries', 'at'],
  order: ['steps', 'start', 'set'],
};

/** Names the document that it looks like, by its format or by the fields that it has. */
const looks = (value: Outside): string => {
  const written = value['format'];
  const formats = DOCUMENT_KINDS.map(formatOf);
  const near = typeof written === 'string' ? nearestName(written, formats) : undefined;
  const named = DOCUMENT_KINDS.find((kind) => formatOf(kind) === near);
  const marked = DOCUMENT_KINDS.find((kind) =>
    MARKS[kind].some((key) => Object.hasOwn(value, key)),
  );
  const kind = named ?? marked;
  return kind === undefined ? 'it looks like none of our documents' : `it looks like a ${kind}`;
};

const readVersion = (kind: DocumentKind, value: Outside, faults: Faults): number | undefined => {
  const oldest = oldestVersion(kind);
  const version: unknown = value['version'];
  const accepted = `"version": ${CURRENT_VERSION}`;
  if (!Object.hasOwn(value, 'version')) {
    faults.refuse('versionMissing', 'version', { found: 'nothing', accepted });
    return undefined;
  }
  if (typeof version !== 'number' || !Number.isInteger(version)) {
    faults.refuse('versionNotWhole', 'version', { found: describe(version), accepted });
    return undefined;
  }
  if (version > CURRENT_VERSION) {
    faults.refuse('versionNewer', 'version', {
      found: `version ${version}`,
      accepted: `versions up to ${CURRENT_VERSION}; update the program to read this one`,
    });
    return undefined;
  }
  if (version < oldest) {
    faults.refuse('versionUnknown', 'version', {
      found: `version ${version}`,
      accepted: oldest === CURRENT_VERSION ? accepted : `versions ${oldest} to ${CURRENT_VERSION}`,
    });
    return undefined;
  }
  return version;
};
