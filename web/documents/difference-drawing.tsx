/** Two revisions in one section: the newer in full ink, the older in broken lines, and letters. */
import { useId, useMemo, useState } from 'react';
import type { HouseMoment } from '#assessment';
import type { DifferenceGroup } from '#differences';
import { sectionDifference } from '#drawings';
import { formatLength, metres } from '#quantities';
import { phrase, type Voice } from '#texts';
import { useAddress } from '../address/use-address.ts';
import { DrawingView } from '../drawing/drawing-view.tsx';
import { useWidth } from '../drawing/use-width.ts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import type { Kept, Open } from '../keeping/kept.ts';
import { useTell, useVoice } from '../language/use-tell.ts';
import { PlannedFrame } from '../order/planned-frame.tsx';
import {
  type Compared,
  compared,
  type Mark,
  marksOf,
  momentAt,
  momentsOf,
  mostApart,
  type Pair,
} from './compared.ts';

type DrawingProps = {
  readonly open: Open;
  readonly kind: Kept['kind'];
  readonly pair: Pair;
  readonly groups: readonly DifferenceGroup[];
  readonly names: { readonly older: number; readonly newer: number; readonly newest: number };
};

export const DifferenceDrawing = ({ open, kind, pair, groups, names }: DrawingProps) => {
  const tell = useTell();
  const { show } = useAddress();
  const marks = useMemo(() => marksOf(groups), [groups]);
  const both = useMemo(() => compared(open, kind, pair, show), [open, kind, pair, show]);
  if (marks.length === 0) {
    return groups.length === 0 ? null : (
      <p className="quiet">{tell('No set differs, so there is nothing to show on the section.')}</p>
    );
  }
  if (!both.ok) {
    const { which, refusals } = both.error;
    const revision = which === 'older' ? names.older : names.newer;
    return (
      <Notice degree="caution" title={tell('there is no drawing of the two')}>
        <p>
          {tell('Revision {revision} does not fit the other documents as they are now.', {
            revision,
          })}
        </p>
        <RefusalsWithPlace refusals={refusals.slice(0, 6)} />
      </Notice>
    );
  }
  return <Framed kind={kind} both={both.value} marks={marks} names={names} />;
};

type FramedProps = {
  readonly kind: Kept['kind'];
  readonly both: Compared;
  readonly marks: readonly Mark[];
  readonly names: DrawingProps['names'];
};

/** What a plan says hangs nowhere yet; a record that is not the newest is not how things stand. */
const Framed = (props: FramedProps) => {
  const { kind, names } = props;
  const tell = useTell();
  const title = tell('Section, revision {newer} over revision {older}', {
    newer: names.newer,
    older: names.older,
  });
  if (kind !== 'state') {
    return (
      <PlannedFrame word="PLANNED" title={title}>
        <Sheet {...props} />
      </PlannedFrame>
    );
  }
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      {names.newer === names.newest ? null : (
        <Notice
          degree="caution"
          title={tell('not how the sets stand now: revision {newest} is newer', {
            newest: names.newest,
          })}
        />
      )}
      <Sheet {...props} />
    </section>
  );
};

const PHONE = 480;
const LEAST = 200;
const TALLEST = 860;

/** The plant of both in the language of the screen. */
const spokenIn = ({ before, after }: Compared, { tongue }: Voice): Compared => ({
  before: { ...before, house: { ...before.house, tongue } },
  after: { ...after, house: { ...after.house, tongue } },
});

const Sheet = ({ kind, both: worked, marks, names }: FramedProps) => {
  const tell = useTell();
  const voice = useVoice();
  const both = useMemo(() => spokenIn(worked, voice), [worked, voice]);
  const id = useId();
  const [box, room] = useWidth<HTMLDivElement>();
  const trims = useMemo(() => momentsOf(kind, both), [kind, both]);
  const [asked, setAsked] = useState<string | null>(null);
  const trim = asked ?? mostApart(trims, both);
  const [before, after] = useMemo(
    () => [momentAt(kind, both.before, trim), momentAt(kind, both.after, trim)],
    [kind, both, trim],
  );
  const paper = useMemo(() => {
    if (room < LEAST) return null;
    const size = { width: room, letter: room < PHONE ? 12.5 : 14, tallest: TALLEST };
    return sectionDifference(
      {
        before: { ...both.before, moment: before },
        after: { ...both.after, moment: after },
        marks,
        names: {
          before: phrase(voice, 'revision {revision}', { revision: names.older }),
          after: phrase(voice, 'revision {revision}', { revision: names.newer }),
        },
      },
      size,
    );
  }, [room, both, before, after, marks, names, voice]);
  return (
    <div className="difference-sheet">
      {trims.length < 2 ? null : (
        <div className="why-field">
          <label htmlFor={id}>{tell('Every set at its trim')}</label>
          <select id={id} value={trim} onChange={({ target }) => setAsked(target.value)}>
            {trims.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        </div>
      )}
      <div ref={box}>{paper === null ? null : <DrawingView drawing={paper.drawing} />}</div>
      <Legend
        marks={marks}
        both={both}
        moments={{ before, after }}
        unplaced={paper?.unplaced ?? []}
      />
    </div>
  );
};

type LegendProps = {
  readonly marks: readonly Mark[];
  readonly both: Compared;
  readonly moments: { readonly before: HouseMoment; readonly after: HouseMoment };
  readonly unplaced: readonly string[];
};

/** What each letter says, so that the drawing can be read without being seen. */
const Legend = ({ marks, both, moments, unplaced }: LegendProps) => {
  const tell = useTell();
  const heightOf = (set: string, moment: HouseMoment): string => {
    const heightM = moment.sets.get(set)?.heightM ?? null;
    return heightM === null ? tell('not known') : formatLength(metres(heightM), both.after.house);
  };
  return (
    <dl className="mark-list" aria-label={tell('What the letters say')}>
      {marks.map(({ letter, set, heading, words }) => {
        const [now, then] = [heightOf(set, moments.after), heightOf(set, moments.before)];
        return (
          <div key={letter}>
            <dt>
              <b>{letter}</b> {heading}
            </dt>
            <dd>
              {now === then
                ? tell('drawn at {now} in both', { now })
                : tell('drawn at {now}, was {old}', { now, old: then })}
              {unplaced.includes(letter)
                ? tell('; not on the section: its place upstage is unknown')
                : ''}
              ; {words[0]}
              {words.length > 1
                ? tell(', and {count} more above', { count: words.length - 1 })
                : ''}
            </dd>
          </div>
        );
      })}
    </dl>
  );
};
