/**
 * Each code is declared once and named by a test; neither the program nor a test uses a code that
 * nobody declared.
 */
import { citedCodes } from './cited-codes.ts';
import { codesIn, type DeclaredCode, declaredCodes } from './declared-codes.ts';
import type { Check, Fault, Source } from './fault.ts';
import { isCode, isTest } from './sources.ts';

const repeated = (declared: readonly DeclaredCode[]): readonly Fault[] => {
  const first = new Map<string, string>();
  return declared.flatMap(({ code, file, line }) => {
    const before = first.get(code);
    if (before !== undefined) {
      return [{ file, line, what: `${code} is also declared in ${before}`, wanted: 'a new code' }];
    }
    first.set(code, `${file}:${line}`);
    return [];
  });
};

/** A code that the program uses and no room declares has no title, no reason and no test. */
const undeclared = (sources: readonly Source[], known: ReadonlySet<string>): readonly Fault[] =>
  sources
    .filter(({ path }) => isCode(path) && !isTest(path) && !path.startsWith('tools/'))
    .flatMap(codesIn)
    .filter(({ code }) => !known.has(code))
    .map(({ code, file, line }) => ({
      file,
      line,
      what: `${code} is declared nowhere`,
      wanted: 'its line in the rule-codes.ts or refusal-codes.ts of the room',
    }));

export const codes: Check = (sources) => {
  const declared = declaredCodes(sources);
  const cited = citedCodes(sources);
  const known = new Set(declared.map(({ code }) => code));
  const tested = new Set(cited.map(({ code }) => code));
  const untested = declared
    .filter(({ code }) => !tested.has(code))
    .map(({ code, file, line }) => ({
      file,
      line,
      what: `no test names ${code}`,
      wanted: `a test whose title begins [${code}]`,
    }));
  const unknown = cited
    .filter(({ code }) => !known.has(code))
    .map(({ code, file, line }) => ({
      file,
      line,
      what: `the test names ${code}, which nobody declares`,
      wanted: 'a code of a rule-codes.ts or refusal-codes.ts',
    }));
  return [...repeated(declared), ...untested, ...unknown, ...undeclared(sources, known)];
};
