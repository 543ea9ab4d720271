import { describe, expect, it } from 'vitest';
import { docExamples } from './doc-examples.ts';

const fenced = (language: string, text: string): string =>
  ['Before', `\`\`\`${language}`, text, '```', 'after'].join('\n');
const faultsOf = (language: string, text: string) =>
  docExamples([{ path: 'docs/a.md', text: fenced(language, text) }]);

describe('examples in documents', () => {
  it('refuses JSON that does not read, and says where', () => {
    expect(faultsOf('json', '{ "mass": 35 lb }')).toMatchObject([{ line: 2 }]);
    expect(faultsOf('json', '{ "mass": "35 lb" }')).toEqual([]);
  });

  it('refuses TypeScript that does not read', () => {
    expect(faultsOf('ts', 'const x = ;')).toHaveLength(1);
    expect(faultsOf('ts', "import { reactions } from '#beam';")).toEqual([]);
  });

  it('leaves other fences alone', () => {
    expect(faultsOf('text', '{ "mass": ... }')).toEqual([]);
  });
});
