import { describe, expect, it } from 'vitest';
import { deadComments } from './dead-comments.ts';

const faultsOf = (text: string, path = 'web/a.tsx') => deadComments([{ path, text }]);
const NOTE = 'TO' + 'DO';

describe('dead comments', () => {
  it.each([
    '// const x = 1;',
    'f(); // g(x);',
    '/* return 2;\n */',
    '// if (x) {',
    '// }',
    'const a = <p>{/* <Curve set={set} /> */}</p>;',
    'const a = f(/* x = y; */ 2);',
  ])('refuses %s', (text) => {
    expect(faultsOf(text)).toMatchObject([{ what: 'code in a comment' }]);
  });

  it.each([
    '// The arbor stops first; then the batten.',
    '// for the two-way pull: see above',
    '// if the arbor is down, so is the brick.',
    '/**\n * Use it so:\n *\n *     const x = f(1);\n */\nconst f = 1;',
    "const s = '// const x = 1;';",
    'const a = <p>https://example.org // return x;</p>;',
  ])('takes %s', (text) => {
    expect(faultsOf(text)).toEqual([]);
  });

  it('refuses a note of work to do, in code and in documents', () => {
    expect(faultsOf(`// ${NOTE}: later`)).toMatchObject([{ what: 'a note of work to do' }]);
    expect(faultsOf(`a\n${NOTE} later`, 'docs/a.md')).toMatchObject([{ line: 2 }]);
  });
});
