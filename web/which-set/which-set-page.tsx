/** A piece to hang, and every free set: ranked, with reasons. A question; nothing is recorded. */
import { useMemo, useState } from 'react';
import type { Refusal } from '#outcome';
import {
  type Candidate,
  codesOnAll,
  lookKey,
  type Places,
  type Ranked,
  rank,
  type Withheld,
} from '#placing';
import { sayFinding } from '#sheets';
import { message } from '#texts';
import { go } from '../address/use-address.ts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { Notice } from '../frame/notice.tsx';
import { Refusals } from '../frame/refusals.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { useTell, useTellCount } from '../language/use-tell.ts';
import { PlannedFrame } from '../order/planned-frame.tsx';
import { useEditing, useWork } from '../reckoning/use-work.ts';
import { withMovedHang, withNewPiece } from './move-hang.ts';
import { PieceForm } from './piece-form.tsx';
import { type Names, sayWithheld } from './place-words.ts';
import { PlacesTable, RuledOut } from './places-table.tsx';
import { type Faults, firstTyped, type Question, readTyped, type Typed } from './typed-piece.ts';
import { usePlaces } from './use-places.ts';

type Asked = { readonly question: Question; readonly typed: Typed };

const NO_FAULTS: Faults = {};
/** More than a dozen searches would keep the machine for a quarter of a minute. */
const MOST_AT_ONCE = 12;

export const WhichSetPage = ({ piece }: { readonly piece: string | null }) => {
  const tell = useTell();
  const work = useWork();
  const [typed, setTyped] = useState(() => firstTyped(work, piece ?? ''));
  const [faults, setFaults] = useState(NO_FAULTS);
  const [asked, setAsked] = useState<Asked | null>(() => {
    const read = typed.from === '' ? null : readTyped(typed, work.show, work.house);
    return read?.is === 'read' ? { question: read.question, typed: read.written } : null;
  });
  const ask = (): void => {
    const read = readTyped(typed, work.show, work.house);
    setFaults(read.is === 'read' ? NO_FAULTS : read.faults);
    if (read.is === 'read') setAsked({ question: read.question, typed: read.written });
  };
  return (
    <>
      <div className="page-head">
        <h1>{tell('Which set?')}</h1>
        <p className="quiet">
          {tell(
            'A piece put on every free set in turn, all else as the show has it. The plan and ' +
              'the record stay as they are.',
          )}
        </p>
      </div>
      <PieceForm typed={typed} faults={faults} onType={setTyped} onAsk={ask} />
      {asked === null ? null : <Answer asked={asked} />}
      <TitleBlock drawing={tell('Which set, a question')} scale={tell('none')} />
    </>
  );
};

const NOTE = message(
  "Reckoned by the plan, with bricks chosen anew for each set. Not reckoned: neighbours' " +
    'heights, swing, keep-outs, sightlines. A set of this list is not cleared for work.',
);

type EveryProps = { readonly candidates: readonly Candidate[]; readonly names: Names };

/** By title: the figures of each set stand in its own row. */
const OnEverySet = ({ candidates, names }: EveryProps) => {
  const tell = useTell();
  const { house } = useWork();
  const onAll = codesOnAll(candidates);
  const titles = (candidates[0]?.lookAt ?? []).flatMap((look) =>
    look.is === 'caution' && onAll.has(lookKey(look))
      ? [`${sayFinding(look.finding, house, names).title} [${look.finding.code}]`]
      : [],
  );
  if (titles.length === 0) return null;
  return (
    <section aria-labelledby="on-all">
      <h3 id="on-all">{tell('To look at on every set')}</h3>
      <ul>
        {[...new Set(titles)].map((title) => (
          <li key={title}>{title}</li>
        ))}
      </ul>
    </section>
  );
};

type AskProps = {
  readonly open: readonly Ranked[];
  readonly from: string | null;
  readonly isAsking: boolean;
  readonly onAsk: (sets: readonly string[]) => void;
};

const AskWork = ({ open, from, isAsking, onAsk }: AskProps) => {
  const tell = useTell();
  if (open.length === 0) return null;
  const best = open.slice(0, MOST_AT_ONCE).map(({ candidate }) => candidate.set);
  return (
    <p className="buttons">
      <button type="button" disabled={isAsking} onClick={() => onAsk(best)}>
        {tell('Ask what the work needs on the best {count}', { count: best.length })}
      </button>
      <span className="quiet">
        {from === null
          ? tell('A search for each, hung from bare and struck to bare.')
          : tell(
              'A search for each, hung from bare and struck to bare, with the bricks of set ' +
                '{from} back on a gallery.',
              { from },
            )}
      </span>
    </p>
  );
};

const NotLookedAt = ({ withheld }: { readonly withheld: readonly Withheld[] }) => {
  const tell = useTell();
  const { house } = useWork();
  return (
    <section aria-labelledby="withheld">
      <h3 id="withheld">{tell('Not looked at')}</h3>
      <p className="quiet">{tell('Sets in use, kept empty or out of service, by number.')}</p>
      <ul className="withheld">
        {withheld.map((each) => (
          <li key={each.set}>
            <b>{each.set}</b> {sayWithheld(each, house)}
          </li>
        ))}
      </ul>
    </section>
  );
};

/** Hangs the piece on a set of the list, as one edit; what is refused stays to be read. */
const useHang = ({ question, typed }: Asked) => {
  const { sets } = useWork();
  const editing = useEditing();
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const { from, hang } = question.piece;
  const placement = hang.items[0]?.placement;
  const widthM = placement?.at === 'spread' ? placement.to - placement.from : null;
  const put = (to: string): void => {
    const move = { to, railOrder: sets.map(({ id }) => id) };
    const found = editing.change({
      write: (show) =>
        from === null
          ? withNewPiece(show, typed, { ...move, widthM })
          : withMovedHang(show, from, move),
      what: from === null ? `${hang.name} hung on set ${to}` : `set ${from} moved to set ${to}`,
    });
    setRefusals(found);
    if (found.length === 0) go({ kind: 'set', set: to });
  };
  return { put, refusals };
};

type OutProps = { readonly out: readonly Ranked[]; readonly names: Names };

const OutOfIt = ({ out, names }: OutProps) => {
  const tell = useTell();
  const { house } = useWork();
  if (out.length === 0) return null;
  return (
    <section aria-labelledby="ruled-out">
      <h3 id="ruled-out" className="signed caution-word">
        <Glyph name="caution" size={18} />
        {tell('Ruled out')}
      </h3>
      <RuledOut ranked={out} house={house} names={names} />
    </section>
  );
};

type CountedProps = { readonly places: Places; readonly able: number };

/** How many sets are free, and how many of them may do. */
const Counted = ({ places: { candidates, withheld }, able }: CountedProps) => {
  const tell = useTell();
  const tellCount = useTellCount();
  const isKept = withheld.some(({ is }) => is === 'keptEmpty');
  const keptHint = isKept
    ? tell(' Some are kept empty: tick the box above to reckon them too.')
    : '';
  return (
    <p role="status">
      {candidates.length === 0
        ? `${tell('No set is free for it as it is asked for.')}${keptHint}`
        : tellCount(
            candidates.length,
            [
              '{count} free set: {able} with nothing known against it.',
              '{count} free sets: {able} with nothing known against them.',
            ],
            { able },
          )}
    </p>
  );
};

const Answer = ({ asked }: { readonly asked: Asked }) => {
  const tell = useTell();
  const { question } = asked;
  const { put, refusals } = useHang(asked);
  const { house } = useWork();
  const { found, asking, askWork } = usePlaces(question);
  const within = (question.wanted?.within ?? null) !== null;
  const ranked = useMemo(
    () => (found === null ? [] : rank(found.places.candidates, found.works, { within })),
    [found, within],
  );
  const { hang } = question.piece;
  const names = (id: string): string => hang.items.find((item) => item.id === id)?.name ?? id;
  const title = tell('{name} on another set', { name: hang.name });
  if (found === null) {
    return (
      <PlannedFrame word="WHAT IF" title={title}>
        <p role="status">{tell('Every free set is being reckoned …')}</p>
      </PlannedFrame>
    );
  }
  const { candidates, now, withheld } = found.places;
  const able = ranked.filter(({ standing }) => standing !== 'cannot');
  const out = ranked.filter(({ standing }) => standing === 'cannot');
  const open = able.filter(({ work }) => work === null);
  return (
    <PlannedFrame word="WHAT IF" title={title} note={tell(NOTE)}>
      <Counted places={found.places} able={able.length} />
      <OnEverySet candidates={candidates} names={names} />
      <AskWork
        open={open}
        from={question.piece.from}
        isAsking={asking.length > 0}
        onAsk={askWork}
      />
      {able.length === 0 && now === null ? null : (
        <PlacesTable
          ranked={able}
          now={now}
          house={house}
          names={names}
          asking={asking}
          onAsk={askWork}
          onHang={put}
        />
      )}
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title={tell('not taken, nothing changed')} isNews>
          <Refusals refusals={refusals} />
        </Notice>
      )}
      <OutOfIt out={out} names={names} />
      <NotLookedAt withheld={withheld} />
    </PlannedFrame>
  );
};
