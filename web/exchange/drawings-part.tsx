/** Section and plan of one moment as SVG and DXF, to a scale and in a unit that are told. */
import { useId, useMemo, useState } from 'react';
import { slug } from '#archive';
import { trimNames } from '#assessment';
import {
  type DrawingKind,
  DXF_UNITS,
  type DxfUnit,
  drawingFile,
  dxfFile,
  MM_A_POINT,
  scalesFor,
  svgFile,
  tradeWord,
  unitWordsOf,
  usualScale,
  usualUnit,
} from '#drawings';
import { sayMoment } from '#sheets';
import { message, phrase } from '#texts';
import { go } from '../address/use-address.ts';
import { Notice } from '../frame/notice.tsx';
import { type MomentChoice, readMoment, writeMoment } from '../house/moment-choice.ts';
import {
  type MomentAnswer,
  momentOf,
  type ShownMoment,
  useOrderMoment,
} from '../house/use-moment.ts';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { download } from './download.ts';

type OrderChoice = Extract<MomentChoice, { readonly of: 'order' }>;

export const DrawingsPart = ({ at }: { readonly at: string | null }) => {
  const tell = useTell();
  const choice = readMoment(at);
  return (
    <section aria-labelledby="drawings-part" className="take-part">
      <h2 id="drawings-part">{tell('Drawings')}</h2>
      <p className="quiet">
        {tell(
          'Section and plan at one moment. SVG is a paper to scale. DXF is the house at its own ' +
            'size: a section has upstage along x and height along y, a plan the stage from above.',
        )}
      </p>
      <MomentSelect choice={choice} />
      {choice === null ? (
        <Notice degree="caution" title={tell('the address names no moment of this house')} />
      ) : choice.of === 'order' ? (
        <OfOrder choice={choice} />
      ) : (
        <OfHouse choice={choice} />
      )}
    </section>
  );
};

const OfOrder = ({ choice }: { readonly choice: OrderChoice }) => (
  <AtMoment answer={useOrderMoment(choice)} />
);

const OfHouse = ({ choice }: { readonly choice: Exclude<MomentChoice, OrderChoice> }) => (
  <AtMoment answer={momentOf(useWork(), choice)} />
);

const AtMoment = ({ answer }: { readonly answer: MomentAnswer }) => {
  const tell = useTell();
  if ('moment' in answer) return <Files shown={answer} />;
  return 'waiting' in answer ? (
    <p role="status">{answer.waiting}</p>
  ) : (
    <Notice degree="caution" title={tell('there is no such moment')}>
      <p>{answer.missing}</p>
    </Notice>
  );
};

const MomentSelect = ({ choice }: { readonly choice: MomentChoice | null }) => {
  const tell = useTell();
  const id = useId();
  const { house, show, sets } = useWork();
  const value = choice === null ? '' : (writeMoment(choice) ?? '');
  const trims = trimNames(sets.map(({ set }) => set));
  const isOrder = choice?.of === 'order';
  return (
    <div className="exchange-field">
      <label htmlFor={id}>{tell('Moment')}</label>
      <select
        id={id}
        value={value}
        onChange={({ target }) =>
          go({ kind: 'takeOut', at: target.value === '' ? null : target.value })
        }
      >
        <option value="">{tell('as recorded')}</option>
        {isOrder ? <option value={value}>{tell('a step of an order')}</option> : null}
        {trims.map((name) => (
          <option key={name} value={`trim:${name}`}>
            {tradeWord(house, 'trim')} {name}
          </option>
        ))}
        {show.cues.map(({ number, set }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: cues stand in the order of the show
          <option key={index} value={`cue:${index + 1}`}>
            {tell('after cue {number}, set {set}', { number, set })}
          </option>
        ))}
      </select>
    </div>
  );
};

const KINDS: readonly (readonly [DrawingKind, string])[] = [
  ['section', message('Section')],
  ['plan', message('Plan')],
];

type Paper = { readonly width: number; readonly height: number };

const inMm = (points: number): number => Math.ceil(points * MM_A_POINT);

const POINTS_AN_INCH = 72;
const inInches = ({ width, height }: Paper) => ({
  width: Math.ceil(width / POINTS_AN_INCH),
  height: Math.ceil(height / POINTS_AN_INCH),
});

const useLines = (words: string): readonly string[] => {
  const { house, show, state, kept, nowMs } = useWork();
  const names = {
    house: kept.house.server.revision,
    show: kept.show.server.revision,
    made: sayMoment(new Date(nowMs).toISOString(), house),
    by: nameOnDevice(),
  };
  const from =
    state === null || kept.state === null
      ? phrase(house, 'From revisions: house {house}, show {show}. Made {made} by {by}.', names)
      : phrase(
          house,
          'From revisions: house {house}, show {show}, record {record}. Made {made} by {by}.',
          { ...names, record: kept.state.server.revision },
        );
  return [`${show.name}, ${words}.`, from];
};

const Files = ({ shown }: { readonly shown: ShownMoment }) => {
  const tell = useTell();
  const { house, show, sets } = useWork();
  const [scale, setScale] = useState(() => usualScale(house));
  const [unit, setUnit] = useState(() => usualUnit(house));
  const lines = useLines(shown.words);
  const subject = { house, sets: sets.map(({ set }) => set), moment: shown.moment };
  const fileOf = (kind: DrawingKind, more: readonly string[], arbors: boolean) =>
    drawingFile(kind, subject, { scale, lines: [...lines, ...more], arbors });
  const name = (kind: DrawingKind): string => `${show.id}-${kind}-${slug(shown.words)}`;
  const takeSvg = (kind: DrawingKind): void =>
    download(`${name(kind)}-1-${scale}.svg`, 'svg', svgFile(fileOf(kind, [], false)));
  const takeDxf = (kind: DrawingKind): void => {
    const file = fileOf(
      kind,
      [tell('Units of the model: {unit}.', { unit: tell(unitWordsOf(unit)) })],
      true,
    );
    download(`${name(kind)}-${unit}.dxf`, 'dxf', dxfFile(file, unit));
  };
  return (
    <>
      <div className="exchange-fields">
        <ScaleChoice
          scale={scale}
          paper={fileOf('section', [], false).drawing}
          onScale={setScale}
        />
        <UnitChoice unit={unit} onUnit={setUnit} />
      </div>
      <div className="take-rows">
        {KINDS.map(([kind, words]) => (
          <div key={kind} className="take-row">
            <span>
              {tell(words)}, {shown.words}
            </span>
            <button type="button" onClick={() => takeSvg(kind)}>
              <span className="only-said">{tell('{drawing} as ', { drawing: tell(words) })}</span>
              SVG
            </button>
            <button type="button" onClick={() => takeDxf(kind)}>
              <span className="only-said">{tell('{drawing} as ', { drawing: tell(words) })}</span>
              DXF
            </button>
          </div>
        ))}
      </div>
      <Previews
        svgs={KINDS.map(([kind, words]) => [tell(words), svgFile(fileOf(kind, [], false))])}
      />
    </>
  );
};

const ScaleChoice = ({
  scale,
  paper,
  onScale,
}: {
  readonly scale: number;
  readonly paper: Paper;
  readonly onScale: (scale: number) => void;
}) => {
  const tell = useTell();
  const id = useId();
  const { house } = useWork();
  return (
    <div className="exchange-field">
      <label htmlFor={id}>{tell('Scale of the paper (SVG)')}</label>
      <select id={id} value={scale} onChange={({ target }) => onScale(Number(target.value))}>
        {scalesFor(house).map((each) => (
          <option key={each} value={each}>
            1:{each}
          </option>
        ))}
      </select>
      <span className="quiet">
        {house.units === 'customary'
          ? tell('the section takes {width} × {height} in of paper', inInches(paper))
          : tell('the section takes {width} × {height} mm of paper', {
              width: inMm(paper.width),
              height: inMm(paper.height),
            })}
      </span>
    </div>
  );
};

const UnitChoice = ({
  unit,
  onUnit,
}: {
  readonly unit: DxfUnit;
  readonly onUnit: (unit: DxfUnit) => void;
}) => {
  const tell = useTell();
  const id = useId();
  return (
    <div className="exchange-field">
      <label htmlFor={id}>{tell('Unit of the model (DXF)')}</label>
      <select
        id={id}
        value={unit}
        onChange={({ target }) =>
          onUnit(DXF_UNITS.find((each: DxfUnit) => each === target.value) ?? unit)
        }
      >
        {DXF_UNITS.map((each) => (
          <option key={each} value={each}>
            {tell(unitWordsOf(each))}
          </option>
        ))}
      </select>
      <span className="quiet">
        {tell('this form of DXF has no place for it: choose it on opening')}
      </span>
    </div>
  );
};

/** The files themselves, as pictures: what is seen is what is taken. */
const Previews = ({ svgs }: { readonly svgs: readonly (readonly [string, string])[] }) => {
  const tell = useTell();
  const pictures = useMemo(
    () =>
      svgs.map(([words, svg]) => [words, `data:image/svg+xml,${encodeURIComponent(svg)}`] as const),
    [svgs],
  );
  return (
    <div className="drawing-previews">
      {pictures.map(([words, source]) => (
        <figure key={words}>
          <img src={source} alt={tell('{drawing} as it will be on paper', { drawing: words })} />
          <figcaption className="quiet">{tell('{drawing}, as SVG', { drawing: words })}</figcaption>
        </figure>
      ))}
    </div>
  );
};
