/** A drawing of `#drawings` as SVG elements whose inks are the tokens of the page. */
import { memo, type ReactNode } from 'react';
import {
  DASHES,
  type Drawing,
  HATCHES,
  type Hatch,
  LETTER_STRETCH,
  LETTER_WEIGHT,
  type Lettering,
  lineWidth,
  SCREEN_PALETTE,
  type Shape,
  type Style,
} from '#drawings';
import { unreachable } from '#outcome';

const hatchId = (hatch: Hatch): string => `hatch-${hatch}`;

/** The hatches of every drawing, once on the page; each drawing refers to them by id. */
export const Hatches = memo(() => (
  <svg className="hatches" width="0" height="0" aria-hidden="true">
    <defs>
      {(Object.keys(HATCHES) as Hatch[]).map((hatch) => {
        const { tile, angle, pen, lineWidth: width, dots } = HATCHES[hatch];
        const ink = SCREEN_PALETTE[pen];
        return (
          <pattern
            key={hatch}
            id={hatchId(hatch)}
            width={tile}
            height={tile}
            patternUnits="userSpaceOnUse"
            patternTransform={`rotate(${angle})`}
          >
            {dots ? (
              <>
                <circle cx={tile / 4} cy={tile / 4} r={width / 2} fill={ink} />
                <circle cx={tile * 0.75} cy={tile * 0.75} r={width / 2} fill={ink} />
              </>
            ) : (
              <path d={`M${tile / 2} 0V${tile}`} stroke={ink} strokeWidth={width} />
            )}
          </pattern>
        );
      })}
    </defs>
  </svg>
));
Hatches.displayName = 'Hatches';

const strokeOf = ({ stroke, weight, dash }: Style) =>
  stroke === undefined
    ? { stroke: 'none' }
    : {
        stroke: SCREEN_PALETTE[stroke],
        strokeWidth: lineWidth(weight, 'screen'),
        ...(dash === undefined ? {} : { strokeDasharray: DASHES[dash] }),
      };

/** Fill beneath, then the hatch with the outline; one element where there is no hatch. */
const inked = (
  style: Style,
  element: (paint: Readonly<Record<string, string | number>>, key: string) => ReactNode,
): ReactNode => {
  const fill = style.fill === undefined ? 'none' : SCREEN_PALETTE[style.fill];
  if (style.hatch === undefined) return element({ fill, ...strokeOf(style) }, 'only');
  const hatched = { fill: `url(#${hatchId(style.hatch)})`, ...strokeOf(style) };
  if (style.fill === undefined) return element(hatched, 'only');
  return [element({ fill, stroke: 'none' }, 'under'), element(hatched, 'over')];
};

const LetteringView = ({ text }: { readonly text: Lettering }) => (
  <text
    x={text.x}
    y={text.y}
    fontSize={text.size}
    fontStretch={`${LETTER_STRETCH[text.width]}%`}
    fontWeight={LETTER_WEIGHT[text.weight]}
    textAnchor={text.anchor}
    fill={SCREEN_PALETTE[text.pen]}
    transform={text.turned ? `rotate(-90 ${text.x} ${text.y})` : undefined}
    {...(text.backed ? { stroke: SCREEN_PALETTE.paper, strokeWidth: 4, paintOrder: 'stroke' } : {})}
  >
    {text.text}
  </text>
);

const ShapeView = ({ shape }: { readonly shape: Shape }): ReactNode => {
  switch (shape.kind) {
    case 'line': {
      const { from, to } = shape;
      return <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} {...strokeOf(shape)} />;
    }
    case 'polyline': {
      const points = shape.points.map(({ x, y }) => `${x},${y}`).join(' ');
      return inked(shape, (paint, key) =>
        shape.closed ? (
          <polygon key={key} points={points} {...paint} />
        ) : (
          <polyline key={key} points={points} {...paint} />
        ),
      );
    }
    case 'path':
      return inked(shape, (paint, key) => <path key={key} d={shape.d} {...paint} />);
    case 'rect': {
      const { x, y, width, height } = shape;
      const box = { x, y, width, height };
      return inked(shape, (paint, key) => <rect key={key} {...box} {...paint} />);
    }
    case 'circle':
      return inked(shape, (paint, key) => (
        <circle key={key} cx={shape.x} cy={shape.y} r={shape.radius} {...paint} />
      ));
    case 'text':
      return <LetteringView text={shape} />;
    case 'group': {
      const { at, scale, part } = shape;
      const place = `translate(${at.x} ${at.y})${scale === 1 ? '' : ` scale(${scale})`}`;
      return (
        <g transform={place} data-part={part}>
          <Shapes shapes={shape.shapes} />
        </g>
      );
    }
    default:
      return unreachable(shape);
  }
};

/** A drawing never changes in place, so its parts are known by their order. */
const keyAt = (index: number): string => `shape ${index}`;

const Shapes = ({ shapes }: { readonly shapes: readonly Shape[] }): ReactNode =>
  shapes.map((shape, index) => <ShapeView key={keyAt(index)} shape={shape} />);

type DrawingViewProps = {
  readonly drawing: Drawing;
  readonly className?: string;
  /** Said elsewhere, by the words beside it. */
  readonly silent?: boolean;
};

/** At its own size, one unit a pixel: a narrow screen gets a drawing of its own, none is shrunk. */
export const DrawingView = memo(({ drawing, className, silent = false }: DrawingViewProps) => {
  const { width, height, title, shapes } = drawing;
  const size = { className, width, height, viewBox: `0 0 ${width} ${height}` };
  if (silent) {
    return (
      <svg {...size} aria-hidden="true">
        <Shapes shapes={shapes} />
      </svg>
    );
  }
  return (
    <svg {...size} role="img" aria-label={title}>
      <Shapes shapes={shapes} />
    </svg>
  );
});
DrawingView.displayName = 'DrawingView';
