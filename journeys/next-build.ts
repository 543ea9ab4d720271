/**
 * A further build of the screens, as an update of the program makes it: every part has another name
 * and what pages of the builds before may yet load is kept by the rule of `web-build`.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { keepBuilds } from '../tools/running/web-builds.ts';

const BUILT = join(import.meta.dirname, '..', 'build', 'web');

export type Screens = {
  readonly folder: string;
  /** The build that is given out now. */
  readonly build: () => string;
  /** Lays a further build over it; the answer is its name. */
  readonly renew: () => string;
  readonly remove: () => void;
};

type List = { readonly build: string; readonly terms: number; readonly files: readonly string[] };

const listIn = (folder: string): List =>
  JSON.parse(readFileSync(join(folder, 'build.json'), 'utf8')) as List;

const isText = (file: string): boolean => /\.(js|css|html|json)$/.test(file);

/** `set-page-Bpy01L9I.js` to `set-page-Bpy01L9I-2.js`. */
const nextName = (file: string, round: number): string =>
  file.replace(/(-\d+)?(\.\w+)$/, `-${round}$2`);

/** One folder of screens by itself, which a journey may renew. */
export const ownScreens = (): Screens => {
  const folder = mkdtempSync(join(tmpdir(), 'counterpoise-screens-'));
  cpSync(BUILT, folder, { recursive: true });
  let round = 1;
  const renew = (): string => {
    round += 1;
    const { build, terms, files } = listIn(folder);
    const next = build.slice(0, -2) + String(round).padStart(2, '0');
    const names = files.flatMap((file) => {
      const [, old] = /^assets\/(.+)$/.exec(file) ?? [];
      return old === undefined ? [] : [[old, nextName(old, round)] as const];
    });
    const renamed = (text: string): string =>
      names.reduce((all, [from, to]) => all.replaceAll(from, to), text).replaceAll(build, next);
    const renewed = [...files, 'sw.js'].map((file) => {
      const bytes = readFileSync(join(folder, file));
      return [renamed(file), isText(file) ? renamed(bytes.toString('utf8')) : bytes] as const;
    });
    for (const [file, content] of renewed) writeFileSync(join(folder, file), content);
    const list = { build: next, terms, files: files.map(renamed) };
    writeFileSync(join(folder, 'build.json'), JSON.stringify(list));
    keepBuilds(folder);
    return next;
  };
  return {
    folder,
    build: () => listIn(folder).build,
    renew,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
};
