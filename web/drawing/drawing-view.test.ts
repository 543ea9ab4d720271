import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { circle, type Drawing, group, lettering, line, path, polygon, rect } from '#drawings';
import { DrawingView, Hatches } from './drawing-view.tsx';

const DRAWING: Drawing = {
  width: 100,
  height: 50,
  title: 'A pipe on its lines',
  shapes: [
    line(0, 1, 2, 3, { stroke: 'red', weight: 'pencil', dash: 'plan' }),
    rect(1, 2, 3, 4, { fill: 'paper', hatch: 'notHeld', stroke: 'ink' }),
    group([circle(5, 5, 2, { fill: 'solid' }), path('M0 0V5', { stroke: 'ink' })], { part: 'now' }),
    polygon(
      [
        { x: 0, y: 0 },
        { x: 1, y: 0 },
        { x: 0, y: 1 },
      ],
      { fill: 'blue' },
    ),
    lettering(9, 9, '25 lb <heavy>', 14, { turned: true, backed: true }),
  ],
};

const html = renderToStaticMarkup(createElement(DrawingView, { drawing: DRAWING }));

describe('drawing on a screen', () => {
  it('is an image with its title as its name', () => {
    expect(html).toMatch(/^<svg[^>]* role="img" aria-label="A pipe on its lines"/);
  });

  it('takes its inks from the tokens of the page, so that the dim follows', () => {
    expect(html).toContain('stroke="var(--red)" stroke-width="2.5" stroke-dasharray="3 3"');
    expect(html).toContain('fill="var(--solid)"');
    expect(html).not.toMatch(/#[0-9a-f]{3}/i);
  });

  it('lays the hatch over the fill, and every hatch it uses is on the page', () => {
    expect(html).toContain('fill="url(#hatch-notHeld)"');
    expect(renderToStaticMarkup(createElement(Hatches))).toContain('id="hatch-notHeld"');
  });

  it('turns lettering, gives it an edge of paper, and escapes it', () => {
    expect(html).toMatch(/rotate\(-90 9 9\)"[^>]*paint-order="stroke">25 lb &lt;heavy&gt;</);
  });

  it('says nothing where words beside it say it', () => {
    const silent = renderToStaticMarkup(
      createElement(DrawingView, { drawing: DRAWING, silent: true }),
    );
    expect(silent).toContain('aria-hidden="true"');
    expect(silent).not.toContain('role=');
  });
});
