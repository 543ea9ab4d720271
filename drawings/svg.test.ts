import { describe, expect, it } from 'vitest';
import { drawingToSvg, HATCHES, PAPER_PALETTE, SCREEN_PALETTE } from './index.ts';
import type { Drawing, Shape } from './shape.ts';
import { circle, group, lettering, line, path, point, polygon, rect } from './shape.ts';

const drawing = (shapes: readonly Shape[]): Drawing => ({
  width: 100,
  height: 50,
  title: 'A "drawing" of <things>',
  shapes,
});

const paper = { palette: PAPER_PALETTE, medium: 'paper' } as const;

describe('a drawing as SVG', () => {
  it('is one element at its own size, with its title for those who cannot see it', () => {
    const svg = drawingToSvg(drawing([]), paper);
    expect(svg).toContain('width="100" height="50" viewBox="0 0 100 50"');
    expect(svg).toContain('aria-label="A &quot;drawing&quot; of &lt;things&gt;"');
  });

  it('keeps what a person typed as words, whatever they typed', () => {
    const typed = '</text><script>alert(1)</script>&';
    const svg = drawingToSvg(drawing([lettering(1, 2, typed, 12, { backed: true })]), paper);
    expect(svg).not.toContain('<script>');
    expect(svg).toContain('&lt;/text&gt;&lt;script&gt;alert(1)&lt;/script&gt;&amp;');
  });

  it('brings each hatch that is used, once, also from within a group', () => {
    const hatched = [
      rect(0, 0, 5, 5, { hatch: 'lock' }),
      group([polygon([point(0, 0), point(1, 1), point(2, 0)], { hatch: 'lock' })]),
      circle(3, 3, 1, { hatch: 'hands' }),
    ];
    const svg = drawingToSvg(drawing(hatched), { ...paper, idPrefix: 'a' });
    expect(svg.match(/<pattern /g)).toHaveLength(2);
    expect(svg.match(/url\(#a-lock\)/g)).toHaveLength(2);
    expect(svg).toContain('<pattern id="a-hands"');
  });

  it('leans held and not held opposite ways, so that no copier makes them one', () => {
    expect(HATCHES.lock.angle).toBe(45);
    expect(HATCHES.notHeld.angle).toBe(-45);
    expect(HATCHES.notHeld.lineWidth).toBeGreaterThan(HATCHES.lock.lineWidth);
  });

  it('takes all its inks from the palette, black and white on paper', () => {
    const shapes = [
      line(0, 0, 1, 1, { stroke: 'red', weight: 'thick', dash: 'hidden' }),
      rect(0, 0, 1, 1, { fill: 'blue' }),
      path('M0 0H1', { stroke: 'ochre', weight: 2 }),
    ];
    const printed = drawingToSvg(drawing(shapes), paper);
    expect(printed).not.toMatch(/#(?!000|fff)[0-9a-f]{3,6}/);
    expect(printed).toContain('stroke-dasharray="5 3"');
    const shown = drawingToSvg(drawing(shapes), { palette: SCREEN_PALETTE, medium: 'screen' });
    expect(shown).toContain('var(--red)');
    expect(shown).toContain('stroke-width="3"');
  });

  it('draws a line on paper a quarter of a millimetre wide for each pixel', () => {
    const svg = drawingToSvg(
      drawing([line(0, 0, 1, 1, { stroke: 'ink', weight: 'thick' })]),
      paper,
    );
    // 3 px are 0.75 mm, and 0.75 mm are 2.126 points.
    expect(svg).toContain('stroke-width="2.13"');
  });

  it('turns words and names their face only where it is asked to', () => {
    const words = [lettering(5, 6, 'up', 12, { turned: true, weight: 'strong' })];
    expect(drawingToSvg(drawing(words), paper)).toContain('rotate(-90 5 6)');
    const named = drawingToSvg(drawing(words), { ...paper, face: () => 'Narrow' });
    expect(named).toContain('font-family="Narrow" font-weight="bold"');
  });

  it('gives the same bytes for the same drawing', () => {
    const shapes = [circle(1 / 3, 2 / 3, 0.1 + 0.2, { stroke: 'ink' })];
    expect(drawingToSvg(drawing(shapes), paper)).toBe(drawingToSvg(drawing(shapes), paper));
    expect(drawingToSvg(drawing(shapes), paper)).toContain('cx="0.33" cy="0.67" r="0.3"');
  });
});
