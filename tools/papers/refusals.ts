/** docs/reference/refusals.md: every code by which an input is not taken. */
import { dirname } from 'node:path';
import { declaredEntries, textOf } from './entries.ts';
import { distinct, HEAD, type Paper, page, table } from './paper.ts';

const make = async (): Promise<string> => {
  const entries = await declaredEntries('refusal-codes.ts');
  const rooms = distinct(entries.map(({ file }) => dirname(file)));
  const sections = rooms.flatMap((room) => [
    '',
    `## ${room}`,
    '',
    ...table(
      ['Code', 'What', 'Why it is not taken'],
      entries
        .filter(({ file }) => dirname(file) === room)
        .map((entry) => [entry.code, textOf(entry, 'title'), textOf(entry, 'meaning')]),
    ),
  ]);
  return page([
    HEAD,
    '',
    '# Refusals',
    '',
    'What is not understood is refused, never guessed. A refusal says where it lies, what was',
    `found and what is accepted. There are ${entries.length} reasons; a code is never reused.`,
    ...sections,
  ]);
};

export const refusals: Paper = { path: 'docs/reference/refusals.md', make };
