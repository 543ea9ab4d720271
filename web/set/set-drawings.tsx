/** Arbor, curve and batten on one scale of height, so that the eye goes straight across. */
import { useCallback, useMemo, useState } from 'react';
import type { SetAssessment } from '#assessment';
import {
  arborDrawing,
  balanceDrawing,
  battenFrontDrawing,
  hungDrawing,
  stackDrawing,
  suspensionSentence,
} from '#drawings';
import type { House, Known } from '#house';
import { sayMeasure, type Table } from '#sheets';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { TableView } from '../sheets-page/table-view.tsx';
import { LETTER, sizeFor } from './drawing-size.ts';
import { Measured } from './measured.tsx';
import { Needs } from './needs.tsx';

const nowOf = ({ recorded }: SetAssessment) => {
  const { state, imbalance } = recorded;
  if (state.height === null || !imbalance.known) return {};
  const { low, high } = imbalance.value;
  return { now: { heightM: state.height.high, lowN: low, highN: high } };
};

type DrawingsProps = { readonly each: SetReckoning; readonly table: Table | null };

export const SetDrawings = ({ each, table }: DrawingsProps) => {
  const { house } = useWork();
  const { set } = each;
  if (set.lineSet.arbor === null) return <WithoutArbor each={each} house={house} />;
  return (
    <>
      <div className="set-drawings">
        <ArborAndStack set={set} house={house} />
        {set.hang !== null && set.hang.deadHungAt !== null ? (
          <HeldBySteel deadHungAt={set.hang.deadHungAt} house={house} />
        ) : (
          <Curve set={set} house={house} table={table} />
        )}
        <FromTheHouse set={set} house={house} />
      </div>
      <Needs each={each} />
      {isDrawnLoaded(set) ? null : <BattenFront set={set} house={house} />}
    </>
  );
};

type PartProps = { readonly set: SetAssessment; readonly house: House };

const ArborAndStack = ({ set, house }: PartProps) => {
  const size = useMemo(() => sizeFor([{ set, house }]), [set, house]);
  const arbor = useCallback(
    (width: number) => arborDrawing(set, house, { width, ...size }),
    [set, house, size],
  );
  const of = set.plan.known ? 'plan' : 'record';
  const stack = useCallback(
    (width: number) => stackDrawing(set, house, { width, height: size.height, letter: LETTER, of }),
    [set, house, size, of],
  );
  const tell = useTell();
  return (
    <div className="arbor-and-stack">
      <Measured title={tell('Arbor')} className="arbor" draw={arbor} />
      <Measured
        title={of === 'plan' ? tell('Stack, planned') : tell('Stack, recorded')}
        className="stack"
        draw={stack}
      />
    </div>
  );
};

const Curve = ({ set, house, table }: PartProps & { readonly table: Table | null }) => {
  const tell = useTell();
  const [after, setAfter] = useState(-1);
  const releases = set.plan.known ? set.plan.value.after : [];
  const size = useMemo(() => sizeFor([{ set, house }]), [set, house]);
  const curve = useCallback(
    (width: number) =>
      balanceDrawing(set, house, {
        width,
        ...size,
        ...nowOf(set),
        ...(after < 0 ? {} : { after }),
      }),
    [set, house, size, after],
  );
  return (
    <Measured title={tell('Balance against height')} className="curve" draw={curve}>
      {releases.length === 0 ? null : (
        <label className="release-choice">
          <span className="label">{tell('shown')}</span>
          <select value={after} onChange={({ target }) => setAfter(Number(target.value))}>
            <option value={-1}>{tell('with all that hangs')}</option>
            {releases.map(({ how }, index) => (
              <option key={how} value={index}>
                {tell('after: {how}', { how })}
              </option>
            ))}
          </select>
        </label>
      )}
      {table === null ? null : (
        <details>
          <summary>{tell('The curve as a table')}</summary>
          <TableView table={table} />
        </details>
      )}
    </Measured>
  );
};

type SteelProps = { readonly deadHungAt: Known<number>; readonly house: House };

/** What hangs is not the arbor's to carry, so a curve would pretend. */
const HeldBySteel = ({ deadHungAt, house }: SteelProps) => {
  const tell = useTell();
  const at = deadHungAt.known
    ? sayMeasure({ value: deadHungAt.value, kind: 'length' }, house)
    : null;
  return (
    <div className="curve">
      <h2>{tell('Balance against height')}</h2>
      <p className="no-arbor">
        {at === null
          ? tell('Steel holds this set at a height that is not known, not its arbor.')
          : tell('Steel holds this set at {at}, not its arbor.', { at })}
      </p>
      <p className="quiet">
        {tell(
          'No curve is drawn: while it is dead-hung it does not travel. To fly it again is an ' +
            'order of work, with bricks on before the steel comes off.',
        )}
      </p>
    </div>
  );
};

const FromTheHouse = ({ set, house }: PartProps) => {
  const size = useMemo(() => sizeFor([{ set, house }]), [set, house]);
  const hung = useCallback(
    (width: number) => hungDrawing(set, house, { width, ...size }),
    [set, house, size],
  );
  const tell = useTell();
  return <Measured title={tell('From the house')} className="hung" draw={hung} />;
};

/** The batten on its lines, drawn below, shows all of it and more. */
const isDrawnLoaded = ({ structure }: SetAssessment): boolean =>
  structure.known && structure.value.hungNeeds.length === 0;

const BattenFront = ({ set, house }: PartProps) => {
  const front = useCallback(
    (width: number) => battenFrontDrawing(set, house, { width, letter: LETTER }),
    [set, house],
  );
  const tell = useTell();
  return <Measured title={tell('Batten from the house')} className="front" draw={front} />;
};

/** A set that takes no bricks says so in words, and no curve is drawn where there is none. */
const WithoutArbor = ({ each, house }: { readonly each: SetReckoning; readonly house: House }) => {
  const tell = useTell();
  return (
    <>
      <div className="set-drawings without-arbor">
        <div>
          <p className="no-arbor">{suspensionSentence(each.set.lineSet, house)}</p>
          <p className="quiet">
            {tell(
              'No curve and no stack are drawn: nothing here balances. What carries it, what it ' +
                'may carry and how it is held stand in the papers of the house.',
            )}
          </p>
        </div>
        <FromTheHouse set={each.set} house={house} />
      </div>
      <BattenFront set={each.set} house={house} />
    </>
  );
};
