/** One moment, small: number, picture, what and who, balance, holds, and what it could set free. */
import { memo, useMemo } from 'react';
import { orderHoldsDrawing, orderStepDrawing, orderZoneDrawing } from '#drawings';
import { energySize, fallWords } from '#sheets';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import type { Moment } from './moments.ts';

const LETTER = 14;
const WIDTH = 164;
const ZONE_WIDTH = 104;
const HEIGHT = 232;

type CardProps = {
  readonly moment: Moment;
  readonly thicker: number;
  readonly isOpen: boolean;
  readonly isEntry: boolean;
  /** Id of the box in which it opens whole. */
  readonly panel: string;
  readonly onPick: (number: number) => void;
};

/** On a narrow card the first words are enough; it opens to all of them. */
const whoOf = ({ said, isZone }: Moment): string => {
  if (said === null) return '';
  return isZone ? (said.who.split(',')[0] ?? said.who) : said.who;
};

export const MomentCard = memo(({ moment, thicker, isOpen, isEntry, panel, onPick }: CardProps) => {
  const tell = useTell();
  const { number, cell, isZone, said } = moment;
  const classes = [
    'moment',
    ...(isZone ? ['zone-moment'] : []),
    ...(cell.isBroken ? ['broken'] : []),
    ...(isOpen ? ['open'] : []),
  ];
  return (
    <li className={classes.join(' ')} data-moment={number}>
      <p className="card-number">{number === 0 ? tell('Now') : number}</p>
      <Picture moment={moment} thicker={thicker} />
      <div className="card-what">
        <button
          type="button"
          className="card-name"
          aria-expanded={isOpen}
          aria-controls={isOpen ? panel : undefined}
          tabIndex={isEntry ? 0 : -1}
          onClick={() => onPick(number)}
        >
          <span className="only-said">
            {number === 0 ? tell('Now: ') : tell('Step {number}: ', { number })}
          </span>
          {number === 0 ? tell('How it stands') : cell.title}
        </button>
        <p className="card-who">
          {said === null ? tell('height {height}', { height: cell.height }) : whoOf(moment)}
        </p>
      </div>
      {isZone ? (
        <p className="card-as-before">{tell('The set stands as before.')}</p>
      ) : (
        <Standing moment={moment} />
      )}
    </li>
  );
});
MomentCard.displayName = 'MomentCard';

const Picture = ({ moment, thicker }: Pick<CardProps, 'moment' | 'thicker'>) => {
  const { house } = useWork();
  const { drawn, isZone } = moment;
  const drawing = useMemo(() => {
    const size = { height: HEIGHT, letter: LETTER, thicker };
    return isZone
      ? orderZoneDrawing(drawn, house, { ...size, width: ZONE_WIDTH })
      : orderStepDrawing(drawn, house, { ...size, width: WIDTH });
  }, [drawn, house, isZone, thicker]);
  return <DrawingView drawing={drawing} className="card-picture" silent />;
};

/** Balance in words, holds as brackets and in words, energy in joules and as a brick let fall. */
const Standing = ({ moment }: Pick<CardProps, 'moment'>) => {
  const tell = useTell();
  const { house } = useWork();
  const { cell, drawn, sign, isDoubtTried } = moment;
  const mirrored = house.stage.operatingSide === 'stageLeft';
  const holds = useMemo(
    () =>
      orderHoldsDrawing(drawn.state, drawn.physics, house, {
        width: WIDTH,
        letter: LETTER,
        isHeld: drawn.isHeld,
        isDoubtTried,
      }),
    [drawn, house, isDoubtTried],
  );
  const { energyJ } = cell;
  const fall = energyJ === null ? '' : fallWords(energyJ, drawn.physics, house);
  return (
    <>
      <p className="card-balance">
        <Glyph name={sign} size={24} mirrored={mirrored} />
        <span>{cell.balance}</span>
      </p>
      <div className="card-holds">
        <DrawingView drawing={holds} />
        <p className={cell.isBroken ? 'card-held not-held' : 'card-held'}>
          {cell.isBroken ? <Glyph name="danger" size={19} /> : null}
          <span>{cell.held}</span>
        </p>
      </div>
      <p className="card-energy">
        <b>{energyJ === null ? tell('not reckoned') : energySize(energyJ, house)}</b>
        <span>{fall ?? tell('nothing to set free')}</span>
      </p>
    </>
  );
};
