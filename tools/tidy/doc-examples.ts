/** Fenced JSON and TypeScript in documents reads as what it says it is. */
import ts from 'typescript';
import type { Check, Fault, Source } from './fault.ts';

type Fence = { readonly language: string; readonly text: string; readonly line: number };

const fencesOf = (text: string): readonly Fence[] => {
  const fences: Fence[] = [];
  for (const found of text.matchAll(/^( *)```(\w+)[^\n]*\n([\s\S]*?)^\1```/gm)) {
    const line = text.slice(0, found.index).split('\n').length;
    fences.push({ language: found[2] ?? '', text: found[3] ?? '', line });
  }
  return fences;
};

const faultOfJson = (text: string): string | undefined => {
  try {
    JSON.parse(text);
    return undefined;
  } catch (error) {
    return String((error as Error).message).split('\n')[0];
  }
};

const faultOfTypeScript = (text: string): string | undefined => {
  const compilerOptions = { target: ts.ScriptTarget.ES2023, module: ts.ModuleKind.ESNext };
  const { diagnostics = [] } = ts.transpileModule(text, {
    compilerOptions,
    reportDiagnostics: true,
  });
  const first = diagnostics[0];
  return first === undefined ? undefined : ts.flattenDiagnosticMessageText(first.messageText, ' ');
};

const faultOf = ({ language, text }: Fence): string | undefined => {
  if (language === 'json') return faultOfJson(text);
  return language === 'ts' || language === 'typescript' ? faultOfTypeScript(text) : undefined;
};

const faultsOf = ({ path, text }: Source): readonly Fault[] =>
  fencesOf(text).flatMap((fence) => {
    const reason = faultOf(fence);
    if (reason === undefined) return [];
    const what = `this ${fence.language} does not read (${reason})`;
    return [{ file: path, line: fence.line, what, wanted: 'an example that does' }];
  });

export const docExamples: Check = (sources) =>
  sources.filter(({ path }) => path.endsWith('.md')).flatMap(faultsOf);
