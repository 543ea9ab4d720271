/**
 * Reads a `case.md`: a line with id and title, then fields whose further lines are set in.
 *
 *     VAL-BEAM-02  Two equal spans under an even load, lifts rigid
 *     Claim    three lifts share the load as 3 : 10 : 3
 *     Oracle   three-moment equation,
 *              worked below by hand
 *     Accept   1 in 10⁹: same closed form
 */
export type ValidationCase = {
  readonly id: string;
  readonly title: string;
  readonly claim: string;
  readonly oracle: string;
  readonly accept: string;
  readonly file: string;
};

const HEADING = /^#*\s*(VAL-[A-Z][A-Z0-9]*-\d{2,})[\s:.–—-]+(.+)$/;
const FIELD = /^(Claim|Given|Oracle|Expect|Accept|Not here)\b:?\s+(.*)$/;

const bare = (line: string): string => line.replace(/\*\*/g, '').replace(/^[-*]\s+/, '');

/** Fields by name. A line that is no field goes on with the last one; a blank line ends it. */
const fieldsOf = (lines: readonly string[]): ReadonlyMap<string, string> => {
  const fields = new Map<string, string>();
  let current = '';
  for (const line of lines.map(bare)) {
    const found = FIELD.exec(line);
    if (found !== null) {
      current = found[1] ?? '';
      fields.set(current, found[2] ?? '');
    } else if (line.trim() === '' || line.startsWith('#') || line.startsWith('```')) {
      current = '';
    } else if (current !== '') {
      fields.set(current, `${fields.get(current)} ${line.trim()}`);
    }
  }
  return fields;
};

const REQUIRED = ['Claim', 'Oracle', 'Accept'] as const;

export type CaseRead =
  | { readonly ok: true; readonly value: ValidationCase }
  | { readonly ok: false; readonly reasons: readonly string[] };

const readOne = (heading: string, lines: readonly string[], file: string): CaseRead => {
  const [, id = '', title = ''] = HEADING.exec(heading) ?? [];
  const fields = fieldsOf(lines);
  const missing = REQUIRED.filter((name) => !fields.get(name)?.trim());
  if (missing.length > 0) {
    return { ok: false, reasons: missing.map((name) => `${file}: ${id} has no ${name}`) };
  }
  const [claim = '', oracle = '', accept = ''] = REQUIRED.map((name) => fields.get(name));
  return { ok: true, value: { id, title: title.trim(), claim, oracle, accept, file } };
};

/** The cases of one file, most often one. */
export const readCases = (text: string, file: string): readonly CaseRead[] => {
  const lines = text.split('\n').map((line) => line.trimEnd());
  const starts = lines.flatMap((line, index) => (HEADING.test(line) ? [index] : []));
  if (starts.length === 0) {
    return [{ ok: false, reasons: [`${file}: no line such as "VAL-BEAM-02  Title"`] }];
  }
  return starts.map((start, nth) =>
    readOne(lines[start] ?? '', lines.slice(start + 1, starts[nth + 1]), file),
  );
};
