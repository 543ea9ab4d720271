import { describe, expect, it } from 'vitest';
import { recordedMoment, trimMoment } from '#assessment';
import { openExample } from '../../examples/open-example.ts';
import { drawingFile, type FileSubject, MM_A_POINT, POINTS_A_METRE } from './drawing-file.ts';
import { svgFile } from './svg-file.ts';

const { house, assessment } = openExample('kestlemere');
const { sets } = assessment;
const planned: FileSubject = { house, sets, moment: trimMoment(sets, 'playing') };
const real: FileSubject = { house: { ...house, demo: false }, sets, moment: recordedMoment(sets) };
const options = { scale: 50, lines: ['Trim playing'], arbors: false };

describe('a drawing to scale on a paper of its own', () => {
  it('is in millimetres of paper: a metre of the stage is 20 mm of it at 1:50', () => {
    const file = drawingFile('section', planned, options);
    expect((POINTS_A_METRE / 50) * MM_A_POINT).toBeCloseTo(20, 9);
    const svg = svgFile(file);
    const [, width = '', height = '', box = ''] =
      /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(svg) ?? [];
    expect(box).toBe(`0 0 ${width} ${height}`);
    // 42 ft of depth with a metre beside, 85 ft of height: a paper of some 0.3 m by 0.6 m.
    expect(Number(width)).toBeGreaterThan(280);
    expect(Number(height)).toBeGreaterThan(500);
  });

  it('has its batten where the house has it, from the zero that it tells', () => {
    const file = drawingFile('section', planned, options);
    const svg = svgFile(file);
    const [, inside = ''] = /<g data-part="set 8"[^>]*>(.*?)<\/g>/s.exec(svg) ?? [];
    const lineSet = sets.find((set) => set.lineSet.id === '8')?.lineSet;
    const upstageM = lineSet?.y.known ? lineSet.y.value : Number.NaN;
    const [, cx = '', cy = ''] = /<circle cx="([\d.]+)" cy="([\d.]+)" r="3"/.exec(inside) ?? [];
    // The place of the field in the paper is that of the zero: both are in the same group.
    const field = drawingFile('section', planned, { ...options, scale: 100 });
    expect(field.zero.x).not.toBe(file.zero.x);
    const perMetre = POINTS_A_METRE / 50;
    const [, left = '', top = ''] =
      /translate\(([\d.]+) ([\d.]+)\)"><g data-part="building"/.exec(svg) ?? [];
    expect((Number(cx) + Number(left) + 30 - file.zero.x) / perMetre).toBeCloseTo(upstageM, 2);
    expect((file.zero.y - Number(cy) - Number(top) - 30) / perMetre).toBeCloseTo(30.25 * 0.3048, 2);
  });

  it('stands in a frame with its word where it is planned or a demo, and in none otherwise', () => {
    expect(svgFile(drawingFile('plan', planned, options))).toContain(
      'DEMO: an invented house and show, PLANNED',
    );
    const plain = svgFile(drawingFile('plan', real, options));
    expect(plain).not.toMatch(/DEMO|PLANNED|data-part="frame"/);
    const own = { ...planned, house: real.house };
    expect(svgFile(drawingFile('plan', own, options))).toMatch(/>PLANNED</);
  });

  it('says its scale, has a bar, and asks for nothing from elsewhere', () => {
    const svg = svgFile(drawingFile('plan', planned, options));
    expect(svg).toContain('Scale 1:50 when printed at 100 %');
    expect(svg).toContain('data-part="scale bar"');
    expect(svg).not.toMatch(/var\(|<script|<style|href=|url\((?!#)/);
  });

  it('takes markup and control signs in a name as text', () => {
    const name = 'Bad <script>alert(1)</script> & "x"\u0000\u001B';
    const svg = svgFile(drawingFile('plan', { ...planned, house: { ...house, name } }, options));
    expect(svg).toContain('Bad &lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;x&quot;');
    expect(svg).not.toContain('<script');
    expect([...svg].some((sign) => sign < ' ' && sign !== '\n')).toBe(false);
  });
});
