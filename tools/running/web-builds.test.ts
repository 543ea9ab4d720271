import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keepBuilds } from './web-builds.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'counterpoise-builds-'));
  mkdirSync(join(folder, 'assets'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const put = (file: string, text = file): void => writeFileSync(join(folder, file), text);

/** What a build leaves in the folder, over what was there: a page, a chunk, the list of both. */
const build = (name: string) => {
  const files = [`assets/set-page-${name}.js`, 'assets/shared.js', 'index.html'];
  for (const file of files) put(file, `${file} of ${name}`);
  put('build.json', JSON.stringify({ build: name, terms: 1, files }));
  put('sw.js');
  put('sw-gone.js');
  return keepBuilds(folder);
};

const assets = (): readonly string[] =>
  readdirSync(join(folder, 'assets')).sort((one, other) => (one < other ? -1 : 1));

describe('builds of the screens in one folder', () => {
  it('keeps what pages of the two builds before may yet load, and no more', () => {
    build('a');
    build('b');
    expect(build('c').map((each) => each.build)).toEqual(['c', 'b', 'a']);
    expect(assets()).toEqual(['set-page-a.js', 'set-page-b.js', 'set-page-c.js', 'shared.js']);
    expect(build('d').map((each) => each.build)).toEqual(['d', 'c', 'b']);
    expect(assets()).toEqual(['set-page-b.js', 'set-page-c.js', 'set-page-d.js', 'shared.js']);
    expect(readFileSync(join(folder, 'index.html'), 'utf8')).toBe('index.html of d');
  });

  it('counts a build once that is made again, as the newest', () => {
    build('a');
    build('b');
    expect(build('a').map((each) => each.build)).toEqual(['a', 'b']);
    expect(build('a').map((each) => each.build)).toEqual(['a', 'b']);
  });

  it('removes what lies there from before there were lists, and keeps both workers', () => {
    put('assets/old.js');
    put('stray.txt');
    build('a');
    expect(assets()).toEqual(['set-page-a.js', 'shared.js']);
    const wanted = ['assets', 'build.json', 'builds.json', 'index.html', 'sw-gone.js', 'sw.js'];
    expect(new Set(readdirSync(folder))).toEqual(new Set(wanted));
  });

  it('does not take a folder for a build that has no list', () => {
    put('index.html');
    expect(() => keepBuilds(folder)).toThrow('defect');
    expect(readdirSync(folder)).toContain('index.html');
  });
});
