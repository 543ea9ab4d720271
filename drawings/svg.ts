/** A drawing as SVG text, for paper and for any page that takes SVG. */
import { unreachable } from '#outcome';
import { textWidth } from './lettering.ts';
import type { Medium, Palette } from './pens.ts';
import { DASHES, HATCHES, LETTER_STRETCH, LETTER_WEIGHT, lineWidth } from './pens.ts';
import type { Drawing, Hatch, Lettering, Point, Shape, Style } from './shape.ts';

export type SvgOptions = {
  readonly palette: Palette;
  readonly medium: Medium;
  /** Starts the ids of the hatches, which must differ between drawings on one page. */
  readonly idPrefix?: string;
  /** Name of the face for lettering of a width; the screen's face has a width axis instead. */
  readonly face?: (text: Lettering) => string;
  /** A file for any program: groups are named, and words keep their room in whatever face. */
  readonly isFile?: boolean;
};

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** Control signs and lone halves of a pair have no place in XML, escaped or not. */
const NOT_XML = /[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu;

export const escaped = (text: string): string =>
  text.replace(NOT_XML, ' ').replace(/[&<>"]/g, (letter) => ESCAPES[letter] ?? letter);

/** Hundredths of a unit are finer than any printer; more digits would only make bytes differ. */
const digits = (value: number): string => `${Number(value.toFixed(2)) + 0}`;

const hatchesIn = (shapes: readonly Shape[]): ReadonlySet<Hatch> =>
  new Set(
    shapes.flatMap((shape): readonly Hatch[] => {
      if (shape.kind === 'group') return [...hatchesIn(shape.shapes)];
      return shape.kind === 'text' || shape.hatch === undefined ? [] : [shape.hatch];
    }),
  );

const patternSvg = (hatch: Hatch, { palette, idPrefix = 'h' }: SvgOptions): string => {
  const { tile, angle, pen, lineWidth: width, dots } = HATCHES[hatch];
  const ink = palette[pen];
  const quarter = digits(tile / 4);
  const body = dots
    ? `<circle cx="${quarter}" cy="${quarter}" r="${width / 2}" fill="${ink}"/>` +
      `<circle cx="${digits(tile * 0.75)}" cy="${digits(tile * 0.75)}" r="${width / 2}" ` +
      `fill="${ink}"/>`
    : `<path d="M${digits(tile / 2)} 0V${tile}" stroke="${ink}" stroke-width="${width}"/>`;
  return (
    `<pattern id="${idPrefix}-${hatch}" width="${tile}" height="${tile}" ` +
    `patternUnits="userSpaceOnUse" patternTransform="rotate(${angle})">${body}</pattern>`
  );
};

const strokeOf = (style: Style, { palette, medium }: SvgOptions): string => {
  if (style.stroke === undefined) return ' stroke="none"';
  const width = lineWidth(style.weight, medium);
  const dash = style.dash === undefined ? '' : ` stroke-dasharray="${DASHES[style.dash]}"`;
  return ` stroke="${palette[style.stroke]}" stroke-width="${width}"${dash}`;
};

const fillOf = (style: Style, { palette }: SvgOptions): string =>
  ` fill="${style.fill === undefined ? 'none' : palette[style.fill]}"`;

/** The element once with its fill, once more under the hatch, and last with its outline. */
const inked = (element: string, style: Style, options: SvgOptions): string => {
  const { hatch } = style;
  if (hatch === undefined) {
    return `<${element}${fillOf(style, options)}${strokeOf(style, options)}/>`;
  }
  const under = style.fill === undefined ? '' : `<${element}${fillOf(style, options)}/>`;
  const id = `${options.idPrefix ?? 'h'}-${hatch}`;
  return `${under}<${element} fill="url(#${id})"${strokeOf(style, options)}/>`;
};

const pointsOf = (points: readonly Point[]): string =>
  points.map(({ x, y }) => `${digits(x)},${digits(y)}`).join(' ');

const letteringSvg = (text: Lettering, options: SvgOptions): string => {
  const { palette, face, isFile = false } = options;
  const room = isFile ? ` textLength="${digits(textWidth(text.text, text.size, text))}"` : '';
  const turn = text.turned ? ` transform="rotate(-90 ${digits(text.x)} ${digits(text.y)})"` : '';
  const family =
    face === undefined
      ? ` font-stretch="${LETTER_STRETCH[text.width]}%" font-weight="${LETTER_WEIGHT[text.weight]}"`
      : ` font-family="${face(text)}"${text.weight === 'strong' ? ' font-weight="bold"' : ''}`;
  const place =
    `<text x="${digits(text.x)}" y="${digits(text.y)}" font-size="${digits(text.size)}"` +
    `${family} text-anchor="${text.anchor}"${room}${turn}`;
  const words = `${escaped(text.text)}</text>`;
  const edge = `${place} fill="none" stroke="${palette.paper}" stroke-width="4">${words}`;
  return `${text.backed ? edge : ''}${place} fill="${palette[text.pen]}">${words}`;
};

const shapeSvg = (shape: Shape, options: SvgOptions): string => {
  switch (shape.kind) {
    case 'line': {
      const { from, to } = shape;
      const ends =
        `x1="${digits(from.x)}" y1="${digits(from.y)}" ` +
        `x2="${digits(to.x)}" y2="${digits(to.y)}"`;
      return `<line ${ends}${strokeOf(shape, options)}/>`;
    }
    case 'polyline': {
      const element = shape.closed ? 'polygon' : 'polyline';
      return inked(`${element} points="${pointsOf(shape.points)}"`, shape, options);
    }
    case 'path':
      return inked(`path d="${shape.d}"`, shape, options);
    case 'rect': {
      const box =
        `rect x="${digits(shape.x)}" y="${digits(shape.y)}" ` +
        `width="${digits(shape.width)}" height="${digits(shape.height)}"`;
      return inked(box, shape, options);
    }
    case 'circle': {
      const round = `cx="${digits(shape.x)}" cy="${digits(shape.y)}" r="${digits(shape.radius)}"`;
      return inked(`circle ${round}`, shape, options);
    }
    case 'text':
      return letteringSvg(shape, options);
    case 'group': {
      const scale = shape.scale === 1 ? '' : ` scale(${digits(shape.scale)})`;
      const place = `translate(${digits(shape.at.x)} ${digits(shape.at.y)})${scale}`;
      const inside = shape.shapes.map((each) => shapeSvg(each, options)).join('');
      const named = options.isFile === true && shape.part !== undefined;
      const name = named ? ` data-part="${escaped(shape.part ?? '')}"` : '';
      return `<g${name} transform="${place}">${inside}</g>`;
    }
    default:
      return unreachable(shape);
  }
};

/** All shapes of a drawing with the hatches that they use. */
export const svgBody = ({ shapes }: Drawing, options: SvgOptions): string => {
  const patterns = [...hatchesIn(shapes)].map((hatch) => patternSvg(hatch, options)).join('');
  const defs = patterns === '' ? '' : `<defs>${patterns}</defs>`;
  return defs + shapes.map((shape) => shapeSvg(shape, options)).join('');
};

/** The whole drawing as one `svg` element at its own size, with its title as accessible name. */
export const drawingToSvg = (drawing: Drawing, options: SvgOptions): string => {
  const { width, height, title } = drawing;
  const size = `width="${digits(width)}" height="${digits(height)}"`;
  const box = `viewBox="0 0 ${digits(width)} ${digits(height)}"`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} ${box} role="img" ` +
    `aria-label="${escaped(title)}">${svgBody(drawing, options)}</svg>`
  );
};
