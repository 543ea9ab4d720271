/** docs/reference/compute.md: what `counterpoise compute` answers, as the command line says it. */
import { runNode } from '../running/program.ts';
import { CannotMake, HEAD, type Paper, page } from './paper.ts';

const ask = async (...args: readonly string[]): Promise<string> => {
  const { code, output } = await runNode(['cli/main.ts', 'compute', ...args], { shown: false });
  if (code !== 0) {
    throw new CannotMake([`"compute ${args.join(' ')}" ended with ${code}: ${output.trim()}`]);
  }
  return output;
};

/** Each line of the list begins with a name; what follows says what it answers. */
export const readList = (text: string): readonly (readonly [name: string, what: string])[] =>
  text
    .split('\n')
    .map((line) => /^\s*([a-z][a-zA-Z-]*)\s*(.*)$/.exec(line))
    .flatMap((found) => (found === null ? [] : [[found[1] ?? '', found[2] ?? ''] as const]));

const sectionOf = async (name: string, what: string): Promise<readonly string[]> => {
  const schema: unknown = JSON.parse(await ask(name, '--schema'));
  const fence = ['```json', JSON.stringify(schema, null, 2), '```'];
  return ['', `## ${name}`, '', ...(what === '' ? [] : [what, '']), ...fence];
};

const make = async (): Promise<string> => {
  const list = readList(await ask('--list'));
  if (list.length === 0) throw new CannotMake(['"compute --list" names nothing']);
  // One after the other: a dozen programs at once are more than two cores and one signal handle.
  const sections: (readonly string[])[] = [];
  for (const [name, what] of list) sections.push(await sectionOf(name, what));
  return page([
    HEAD,
    '',
    '# Calculations',
    '',
    'One JSON object in, one out; or a list of them in, and a list of answers out, in order. SI',
    'throughout, angles in degrees. Bad input ends with code 2 and a line for each fault.',
    '',
    '    ./bin/counterpoise compute NAME < input.json > output.json',
    ...sections.flat(),
  ]);
};

export const compute: Paper = { path: 'docs/reference/compute.md', make };
