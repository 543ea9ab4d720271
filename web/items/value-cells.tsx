/** A figure with its tolerance and its basis: three cells that every row of a take-off has. */

import type { Basis, House } from '#house';
import { type Dimension, decimalMarkOf } from '#quantities';
import { basisWords } from '#sheets';
import {
  TYPED,
  withBasis,
  withField,
  withLength,
  withMass,
  withTolerance,
} from '../editing/show-edits.ts';
import { writtenText, writtenTolerance } from '../editing/written.ts';
import { ChoiceCell } from '../grid/choice-cell.tsx';
import { EditCell } from '../grid/edit-cell.tsx';
import { shownText } from '../grid/typed-marks.ts';
import { isObject, type Json, type JsonPath } from '../keeping/json.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { useEditing } from '../reckoning/use-work.ts';
import { basisOptions } from './item-words.ts';

export type Figure = {
  readonly set: string;
  /** From the hang. */
  readonly path: JsonPath;
  /** "Bar cable", "moving head: each". */
  readonly name: string;
  readonly written: Json | undefined;
  /** What a "given" above says where the figure itself says nothing. */
  readonly givenBasis: Basis | null;
  readonly dimension: Dimension;
};

/** Lengths are decided or measured; every other figure weighs, and a new one has no old source. */
const write = ({ dimension }: Figure) => (dimension === 'length' ? withLength : withMass);

type CellProps = { readonly figure: Figure; readonly house: House };

export const FigureCell = ({ figure, house }: CellProps) => {
  const tell = useTell();
  const editing = useEditing();
  const { set, path, name, written, dimension } = figure;
  const mark = decimalMarkOf(house);
  const text = writtenText(written);
  return (
    <EditCell
      name={tell('{name}, set {set}', { name, set })}
      text={text}
      className="number"
      measure={{ dimension, units: house.units }}
      take={(typed) =>
        editing.change({
          write: (show) => write(figure)(show, set, path, typed),
          what: `${name} on set ${set}: ${typed}`,
        })
      }
    >
      {text === '' ? <span className="unknown">{tell('unknown')}</span> : shownText(text, mark)}
    </EditCell>
  );
};

const basisOf = ({ written, givenBasis }: Figure): string | null => {
  const own = isObject(written) ? written['basis'] : undefined;
  return typeof own === 'string' ? own : givenBasis;
};

const shareOf = (house: House, basis: string | null): string | null => {
  const share = basis === null ? undefined : house.rules.toleranceByBasis[basis as Basis];
  return share === undefined ? null : `${Math.round(share * 1000) / 10} %`;
};

/** An own tolerance, else the one that the house gives to the basis; neither is plainly unknown. */
export const ToleranceCell = ({ figure, house }: CellProps) => {
  const tell = useTell();
  const editing = useEditing();
  const { set, path, name, written } = figure;
  const own = writtenTolerance(written);
  const share = shareOf(house, basisOf(figure));
  return (
    <EditCell
      name={tell('tolerance of {name}, set {set}', { name, set })}
      text={own}
      className="number"
      take={(typed) =>
        editing.change({
          write: (show) => withTolerance(show, set, path, typed),
          what: `tolerance of ${name} on set ${set}: ${typed || 'as the house says'}`,
        })
      }
    >
      {own !== '' ? (
        `± ${own}`
      ) : share !== null ? (
        <>
          ± {share} <small>{tell('house')}</small>
        </>
      ) : (
        <span className="unknown">{tell('not given')}</span>
      )}
    </EditCell>
  );
};

export const BasisCell = ({ figure }: CellProps) => {
  const voice = useVoice();
  const tell = useTell();
  const editing = useEditing();
  const { set, path, name, written } = figure;
  const basis = basisOf(figure);
  const source = isObject(written) ? written['source'] : undefined;
  const isFresh = source === TYPED && basis === 'estimated';
  return (
    <ChoiceCell
      name={tell('basis of {name}, set {set}', { name, set })}
      chosen={basis ?? ''}
      options={basisOptions(voice)}
      take={(value) =>
        editing.change({
          write: (show) => withBasis(show, set, path, value),
          what: `basis of ${name} on set ${set}: ${value}`,
        })
      }
    >
      {basis === null ? (
        <span className="unknown">{tell('unknown')}</span>
      ) : (
        basisWords(basis as Basis, voice)
      )}
      {isFresh ? <small> {tell(' until you say how it is known')}</small> : null}
      {typeof source === 'string' && !isFresh ? <small> {source}</small> : null}
    </ChoiceCell>
  );
};

/** A plain number of pieces. */
export const CountCell = ({ figure }: CellProps) => {
  const tell = useTell();
  const editing = useEditing();
  const { set, path, name, written } = figure;
  const text = writtenText(written);
  return (
    <EditCell
      name={tell('{name}, set {set}', { name, set })}
      text={text}
      className="number"
      take={(typed) =>
        editing.change({
          // A text that is no number goes on as it is, so that the refusal names what was found.
          write: (show) =>
            withField(show, set, path, /^\d+$/.test(typed.trim()) ? Number(typed) : typed),
          what: `${name} on set ${set}: ${typed}`,
        })
      }
    >
      {text}
    </EditCell>
  );
};
