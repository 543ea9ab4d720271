import { DOCUMENT_KINDS, type DocumentKind, schemaOf } from '#documents';
import { EXIT, type ExitCode } from './exit-codes.ts';
import { COMMAND_REFUSALS } from './refusal-codes.ts';
import { sayRefusals, type Voice } from './voice.ts';

/** Prints the published schema of a document. */
export const printSchema = (voice: Voice, name: string): ExitCode => {
  if (!isKind(name)) {
    const accepted = DOCUMENT_KINDS.join(', ');
    sayRefusals(voice, 'schema', [
      { code: COMMAND_REFUSALS.noDocument.code, path: '', found: `"${name}"`, accepted },
    ]);
    return EXIT.badInput;
  }
  voice.out(`${JSON.stringify(schemaOf(name), null, 2)}\n`);
  return EXIT.clear;
};

const isKind = (name: string): name is DocumentKind =>
  (DOCUMENT_KINDS as readonly string[]).includes(name);
