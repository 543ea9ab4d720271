/** The batten drawn, with hands laid on it: turnbuckles over the lines, loads to drag. */
import { useMemo } from 'react';
import type { SetStructure, StructureState } from '#assessment';
import { battenLoadsDrawing, placeWords } from '#drawings';
import type { House, LineSet } from '#house';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useWidth } from '../drawing/use-width.ts';
import { worstWords } from './line-words.ts';
import { LoadStrip, type Movable } from './load-strip.tsx';
import { Turnbuckles } from './turnbuckles.tsx';
import { stepsIn, type WhatIf, withPlace, withTurn } from './what-if.ts';

type Props = {
  readonly structure: SetStructure;
  /** As it stands, and as it is drawn. */
  readonly before: StructureState;
  readonly state: StructureState;
  readonly isWhatIf: boolean;
  readonly whatIf: WhatIf;
  readonly house: House;
  readonly lineSet: LineSet;
  readonly items: readonly string[];
  readonly loads: readonly Movable[];
  readonly chosen: Movable | undefined;
  /** Which load a person has taken in hand, if any. */
  readonly inHand: number | null;
  readonly onChoose: (index: number) => void;
  readonly onChange: (change: (now: WhatIf) => WhatIf) => void;
};

const LETTER = 14;
const LEAST_WIDTH = 120;

const useDrawing = (props: Props, width: number) => {
  const { structure, before, state, isWhatIf, house, lineSet, items, inHand } = props;
  const { lineLimit } = lineSet;
  return useMemo(
    () =>
      width < LEAST_WIDTH
        ? null
        : battenLoadsDrawing(structure, state, house, {
            width,
            letter: LETTER,
            lineLimitN: lineLimit.known ? lineLimit.value : null,
            items,
            ...(isWhatIf ? { before } : {}),
            ...(inHand === null ? {} : { inHand }),
          }),
    [structure, before, state, isWhatIf, house, lineLimit, items, inHand, width],
  );
};

export const BattenFigure = (props: Props) => {
  const { structure, before, state, whatIf, house, loads, chosen, onChoose, onChange } = props;
  const [ref, width] = useWidth<HTMLDivElement>();
  const drawing = useDrawing(props, width);
  const steps = stepsIn(house.units);
  return (
    <div ref={ref} className="batten-drawn">
      {drawing === null ? null : (
        <>
          <Turnbuckles
            structure={structure}
            lines={state.lines}
            turns={whatIf.turns}
            house={house}
            stepM={steps.turnM}
            xOf={drawing.xOf}
            onTurn={(line, byM) =>
              onChange((now) => withTurn(now, line, byM, structure.lines.length))
            }
          />
          <div className="batten-paper">
            <DrawingView drawing={drawing} />
            {chosen === undefined ? null : (
              <LoadStrip
                drawing={drawing}
                loads={loads}
                chosen={chosen}
                steps={steps}
                said={`${placeWords(house, chosen.x)}; ${worstWords(state, house)}`}
                onChoose={onChoose}
                onMove={(index, x) =>
                  onChange((now) => withPlace(now, index, x, before.loads.length))
                }
              />
            )}
          </div>
        </>
      )}
    </div>
  );
};
