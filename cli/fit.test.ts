import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { heard } from './heard.ts';

const file = (...parts: readonly string[]): string =>
  join(import.meta.dirname, '..', 'examples', ...parts);
const HERE = file('kestlemere', 'house.json');
const SHOW = file('kestlemere', 'clockmaker.show.json');
const THERE = ['--house', file('skelderwick', 'house.json')] as const;
const STATE = ['--state', file('skelderwick', 'state.json')] as const;
const folder = mkdtempSync(join(tmpdir(), 'counterpoise-fit-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('fit', () => {
  it('says what differs, what no longer works and what to ask, in the units here', async () => {
    const { code, out, err } = await heard('fit', HERE, SHOW, ...THERE, ...STATE);
    const said = out.replaceAll('\u00a0', ' ');
    // The rules find things at stop level there.
    expect(code).toBe(1);
    expect(err).toContain('pieces tried on every set: 28 of 28');
    expect(said).toMatch(/^DEMO: an invented house and show\nWHAT IF: .* in Skelderwick Theatre\n/);
    expect(said).toContain('operating side: stage right, there stage left');
    expect(said).toContain('HANGS NOWHERE');
    expect(said).toMatch(/Danger: .* \[LOD-005\]/);
    expect(said).toContain('please tell us what you know of the following.');
    expect(said).toMatch(/\d+ of 28 pieces hang\. NOT AN ORDER OF WORK\.\n$/);
  });

  it('writes a show that the other house reads', async () => {
    const out = join(folder, 'fitted.show.json');
    const named = ['--out', out, '--id', 'vell-on-tour', '--name', 'Vell on tour'] as const;
    await heard('fit', HERE, SHOW, ...THERE, ...named);
    expect(JSON.parse(readFileSync(out, 'utf8'))).toMatchObject({
      id: 'vell-on-tour',
      name: 'Vell on tour',
      house: 'skelderwick',
    });
    const { code, err } = await heard('check', file('skelderwick', 'house.json'), out);
    expect(err).toBe('');
    expect(code).toBe(1);
  });

  it('answers as JSON', async () => {
    const { out } = await heard('fit', HERE, SHOW, ...THERE, '--json');
    const { pieces, mapping, questions } = JSON.parse(out);
    expect(pieces).toHaveLength(28);
    expect(mapping['1']).toBe('1');
    expect(questions.length).toBeGreaterThan(5);
  });

  it('says which file is at fault', async () => {
    const missing = await heard('fit', HERE, SHOW, '--house', join(folder, 'none.json'));
    expect(missing.code).toBe(2);
    expect(missing.err).toContain('[CLI-001]');
    const other = await heard('fit', HERE, file('skelderwick', 'regatta.show.json'), ...THERE);
    expect(other.code).toBe(2);
    expect(other.err).toContain('[DOC-100]');
  });
});
