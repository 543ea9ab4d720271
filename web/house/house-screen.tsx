/** The house: its section and plan at a moment, and its limits with their sources. */
import { lazy, Suspense } from 'react';
import { message } from '#texts';
import type { HousePart, Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { useWallSets } from '../frame/wall-sets.ts';
import { HousePage } from '../house-page/house-page.tsx';
import type { Databases } from '../keeping/server.ts';
import { useTell } from '../language/use-tell.ts';
import { PlannedFrame } from '../order/planned-frame.tsx';
import { useWork } from '../reckoning/use-work.ts';
import { MomentBar } from './moment-bar.tsx';
import { type MomentChoice, readMoment, sheetMoment, writeMoment } from './moment-choice.ts';
import { PlanView } from './plan-view.tsx';
import { SectionTable } from './section-table.tsx';
import { SectionView } from './section-view.tsx';
import { SetInHand } from './set-in-hand.tsx';
import { type MomentAnswer, momentOf, type ShownMoment, useOrderMoment } from './use-moment.ts';

const HouseEntry = lazy(async () => ({
  default: (await import('../house-entry/house-entry.tsx')).HouseEntry,
}));
const HouseFound = lazy(async () => ({
  default: (await import('../house-found/house-found.tsx')).HouseFound,
}));

export type HouseScreenProps = {
  readonly place: Extract<Place, { readonly kind: 'house' }>;
  readonly databases: Databases;
  readonly setInHand: string | null;
  readonly onTake: (set: string) => void;
};

const PARTS: readonly (readonly [HousePart, string])[] = [
  ['section', message('Section')],
  ['plan', message('Plan')],
  ['limits', message('Limits')],
  ['enter', message('Enter')],
  ['found', message('As found')],
];

const isDrawing = (part: HousePart): boolean => part === 'section' || part === 'plan';

export const HouseScreen = (props: HouseScreenProps) => {
  const { place, databases } = props;
  const { house } = useWork();
  const tell = useTell();
  return (
    <>
      <div className="house-head">
        <h1>{house.name}</h1>
        <nav aria-label={tell('Of the house')} className="house-parts">
          {PARTS.map(([part, words]) => (
            <Link
              key={part}
              to={{ kind: 'house', part, at: isDrawing(part) ? place.at : null }}
              isHere={part === place.part}
            >
              {tell(words)}
            </Link>
          ))}
        </nav>
      </div>
      {isDrawing(place.part) ? (
        <Drawings {...props} />
      ) : (
        <Suspense fallback={<p className="empty-words">{tell('Fetching this screen …')}</p>}>
          {place.part === 'enter' ? (
            <HouseEntry place={place} />
          ) : place.part === 'found' ? (
            <HouseFound place={place} />
          ) : (
            <HousePage databases={databases} />
          )}
        </Suspense>
      )}
    </>
  );
};

const Drawings = (props: HouseScreenProps) => {
  const { place } = props;
  const tell = useTell();
  const choice = readMoment(place.at);
  if (choice === null) {
    return (
      <Notice degree="caution" title={tell('the address names no moment of this house')}>
        <p>
          {tell(
            'Found {found}. Accepted: trim and its name, cue and how many are done, or a step of ' +
              'an order.',
            { found: place.at ?? '' },
          )}{' '}
          <Link to={{ kind: 'house', part: place.part, at: null }}>
            {tell('Show the house as recorded')}
          </Link>
        </p>
      </Notice>
    );
  }
  return choice.of === 'order' ? (
    <OfOrder {...props} choice={choice} />
  ) : (
    <OfHouse {...props} choice={choice} />
  );
};

type Of<C> = HouseScreenProps & { readonly choice: C };
type OrderChoice = Extract<MomentChoice, { readonly of: 'order' }>;

const OfOrder = ({ choice, ...props }: Of<OrderChoice>) => (
  <Shown {...props} choice={choice} answer={useOrderMoment(choice)} />
);

const OfHouse = ({ choice, ...props }: Of<Exclude<MomentChoice, OrderChoice>>) => {
  const { sets, isOfCall } = useWallSets();
  const answer = momentOf(useWork(), choice, isOfCall ? sets : null);
  return <Shown {...props} choice={choice} answer={answer} />;
};

const Shown = ({
  place,
  choice,
  answer,
  setInHand,
  onTake,
}: Of<MomentChoice> & { readonly answer: MomentAnswer }) => {
  const tell = useTell();
  const name =
    place.part === 'plan' ? tell('Plan, upstage up') : tell('Section, looking to stage right');
  return (
    <>
      <MomentBar part={place.part} choice={choice} />
      {'moment' in answer ? (
        <Framed name={name} shown={answer}>
          {place.part === 'plan' ? (
            <PlanView moment={answer.moment} setInHand={setInHand} onTake={onTake} />
          ) : (
            <SectionView moment={answer.moment} setInHand={setInHand} onTake={onTake} />
          )}
          <SetInHand moment={answer.moment} id={setInHand} />
          <SectionTable moment={answer.moment} />
          <AsSheet part={place.part} choice={choice} />
        </Framed>
      ) : 'waiting' in answer ? (
        <p className="empty-words" role="status">
          {answer.waiting}
        </p>
      ) : (
        <Notice degree="caution" title={tell('there is no such moment')}>
          <p>{answer.missing}</p>
        </Notice>
      )}
      <TitleBlock
        drawing={tell('{name}, {moment}', {
          name,
          moment: 'moment' in answer ? answer.words : tell('not there'),
        })}
        scale={tell('a bar below the drawing; heights above the deck')}
      />
    </>
  );
};

type AsSheetProps = { readonly part: HousePart; readonly choice: MomentChoice };

/**
 * The same on paper, where it is of a moment that has a name: a step of an order has its own. And
 * as a file for programs that draw, of any moment.
 */
const AsSheet = ({ part, choice }: AsSheetProps) => {
  const tell = useTell();
  const at = sheetMoment(choice, useWork().show);
  return (
    <p className="as-sheet buttons">
      {at === null ? null : (
        <Link to={{ kind: 'sheets', sheet: `${part}/${at}` }}>
          {tell('This drawing as a sheet to print')}
        </Link>
      )}
      <Link to={{ kind: 'takeOut', at: writeMoment(choice) }}>{tell('as SVG or DXF')}</Link>
    </p>
  );
};

/** What was recorded stands plain; what somebody intends has its frame and its word. */
const Framed = ({
  name,
  shown,
  children,
}: {
  readonly name: string;
  readonly shown: ShownMoment;
  readonly children: React.ReactNode;
}) =>
  shown.moment.is === 'planned' ? (
    <PlannedFrame word="PLANNED" title={`${name}, ${shown.words}`}>
      <div className="section-sheet">{children}</div>
    </PlannedFrame>
  ) : (
    <section className="section-sheet" aria-label={`${name}, ${shown.words}`}>
      <p className="quiet section-words">{shown.words}</p>
      {children}
    </section>
  );
