/**
 * A mass is in kilograms and a weight is in newtons. A name that mixes the two will one day be
 * passed where the other is meant, and both are just numbers then.
 */
import ts from 'typescript';
import type { Check, Fault, Source } from './fault.ts';
import { isCode } from './sources.ts';
import { lineOf, nodesOf, treeOf } from './syntax.ts';

const FORCE_UNITS = ['N', 'Kn', 'KN', 'Newton', 'Newtons', 'Lbf', 'Kilonewtons'];
const MASS_UNITS = ['Kg', 'Kilogram', 'Kilograms', 'Lb', 'Lbs', 'Pounds', 'Grams', 'Tonnes'];
const FORCE_TYPES = ['Newtons'];
const MASS_TYPES = ['Kilograms'];

/** `pipeWeightKg` is pipe, weight, Kg. A `counterweight` is a thing and one word, no quantity. */
const wordsOf = (name: string): readonly string[] =>
  name
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .split(/[ _$]+/)
    .filter((word) => word !== '');

type Meaning = 'mass' | 'weight' | 'both' | 'neither';

const meaningOf = (words: readonly string[]): Meaning => {
  const lower = words.map((word) => word.toLowerCase());
  const mass = lower.some((word) => word === 'mass' || word === 'masses');
  const weight = lower.some((word) => word === 'weight' || word === 'weights');
  if (mass && weight) return 'both';
  return mass ? 'mass' : weight ? 'weight' : 'neither';
};

const WANTED = { mass: 'a mass is in kilograms', weight: 'a weight is in newtons' } as const;

const faultOfName = (name: string): string | undefined => {
  const words = wordsOf(name);
  const meaning = meaningOf(words);
  const unit = words.at(-1) ?? '';
  if (meaning === 'mass' && FORCE_UNITS.includes(unit)) return WANTED.mass;
  if (meaning === 'weight' && MASS_UNITS.includes(unit)) return WANTED.weight;
  return undefined;
};

const faultOfType = (name: string, type: string): string | undefined => {
  const meaning = meaningOf(wordsOf(name));
  if (meaning === 'mass' && FORCE_TYPES.includes(type)) return WANTED.mass;
  if (meaning === 'weight' && MASS_TYPES.includes(type)) return WANTED.weight;
  return undefined;
};

const typeBeside = (node: ts.Identifier): string => {
  const owner = node.parent as { readonly name?: ts.Node; readonly type?: ts.TypeNode };
  return owner.name === node && owner.type !== undefined ? owner.type.getText() : '';
};

const faultsOf = (source: Source): readonly Fault[] => {
  const tree = treeOf(source);
  const seen = new Set<string>();
  return nodesOf(tree)
    .filter(ts.isIdentifier)
    .flatMap((node) => {
      const wanted = faultOfName(node.text) ?? faultOfType(node.text, typeBeside(node));
      if (wanted === undefined || seen.has(node.text)) return [];
      seen.add(node.text);
      const line = lineOf(tree, node);
      return [{ file: source.path, line, what: `${node.text} mixes mass and weight`, wanted }];
    });
};

export const massOrWeight: Check = (sources) =>
  sources.filter(({ path }) => isCode(path)).flatMap(faultsOf);
