/** From documents and address to a screen. States in between are screens too. */
import { lazy, Suspense, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { unreachable } from '#outcome';
import { message, phrase } from '#texts';
import type { Place } from './address/address.ts';
import { useAddress } from './address/use-address.ts';
import { DocumentsAlone, DocumentsScreen, OrDocuments } from './documents/documents-alone.tsx';
import { Hatches } from './drawing/drawing-view.tsx';
import { Defect } from './frame/defect.tsx';
import { Frame } from './frame/frame.tsx';
import { Failed, Loading, Missing, NotRead, Nowhere } from './frame/in-between.tsx';
import { SaveNotices } from './frame/save-notices.tsx';
import { TitleStrip } from './frame/title-strip.tsx';
import { useUndoKeys } from './frame/use-undo-keys.ts';
import { Wall } from './frame/wall.tsx';
import { HangListPage } from './hang-list/hang-list-page.tsx';
import type { Open } from './keeping/kept.ts';
import { useKeeper, useKeeping } from './keeping/use-keeper.ts';
import { type Spoken, SpokenContext, useSpoken, useTell } from './language/use-tell.ts';
import { PageNews } from './offline/page-news.tsx';
import { useOffline } from './offline/use-offline.ts';
import { type InView, inView } from './reckoning/in-view.ts';
import type { Reckoning } from './reckoning/reckon.ts';
import { RowsAheadContext } from './reckoning/rows-ahead.ts';
import { useReckoning } from './reckoning/use-reckoning.ts';
import { useGently, useShownState } from './reckoning/use-shown-state.ts';
import { EditingContext, editingOf, type Work, WorkContext } from './reckoning/use-work.ts';
import { SelfCheckNotice } from './self-check/self-check-notice.tsx';
import { useSelfChecks } from './self-check/use-checks.ts';

const SetPage = lazy(async () => ({ default: (await import('./set/set-page.tsx')).SetPage }));
const OrderPage = lazy(async () => ({
  default: (await import('./order/order-page.tsx')).OrderPage,
}));
const SheetsPage = lazy(async () => ({
  default: (await import('./sheets-page/sheets-page.tsx')).SheetsPage,
}));
const HouseScreen = lazy(async () => ({
  default: (await import('./house/house-screen.tsx')).HouseScreen,
}));

const WhatIfPage = lazy(async () => ({
  default: (await import('./what-if/what-if-page.tsx')).WhatIfPage,
}));
const ComparePage = lazy(async () => ({
  default: (await import('./what-if/compare-page.tsx')).ComparePage,
}));
const AnotherHousePage = lazy(async () => ({
  default: (await import('./another-house/another-house-page.tsx')).AnotherHousePage,
}));
const WhichSetPage = lazy(async () => ({
  default: (await import('./which-set/which-set-page.tsx')).WhichSetPage,
}));
const BringInPage = lazy(async () => ({
  default: (await import('./exchange/bring-in-page.tsx')).BringInPage,
}));
const TakeOutPage = lazy(async () => ({
  default: (await import('./exchange/take-out-page.tsx')).TakeOutPage,
}));
const NotesPage = lazy(async () => ({
  default: (await import('./live/notes-page.tsx')).NotesPage,
}));
const LiveScreen = lazy(async () => ({
  default: (await import('./call/live-screen.tsx')).LiveScreen,
}));
const DrillPage = lazy(async () => ({
  default: (await import('./drill/drill-page.tsx')).DrillPage,
}));
const PeopleScreen = lazy(async () => ({
  default: (await import('./people/people-screen.tsx')).PeopleScreen,
}));
const SelfCheckPage = lazy(async () => ({
  default: (await import('./self-check/self-check-page.tsx')).SelfCheckPage,
}));

const ThisServerPage = lazy(async () => ({
  default: (await import('./this-server/this-server-page.tsx')).ThisServerPage,
}));

export const App = () => {
  useKeeping();
  useSelfChecks();
  const state = useShownState(useContext(RowsAheadContext));
  const address = useAddress();
  useOffline(state.phase === 'open');
  if (address.place.kind === 'people') return <PeopleAlone place={address.place} />;
  if (state.phase === 'loading') return <Loading />;
  if (state.phase === 'failed' && state.needsSignIn) return <PeopleAlone place={SIGN_IN} />;
  if (state.phase === 'failed') return <Failed title={state.title} unreached={state.unreached} />;
  const view = inView(state, address);
  if ('missing' in view) {
    return (
      <DocumentsAlone open={state} place={address.place}>
        <PageNews open={state} />
        <Missing what={view.missing} open={state} />
      </DocumentsAlone>
    );
  }
  return (
    <Defect>
      <Hatches />
      <Workspace key={view.house.id + view.show.id} open={state} view={view} />
    </Defect>
  );
};

type PeoplePlace = Extract<Place, { readonly kind: 'people' }>;

const SIGN_IN: PeoplePlace = { kind: 'people', part: 'signIn' };

/** Beside the documents, which are shown to nobody who has not signed in. */
const PeopleAlone = ({ place }: { readonly place: PeoplePlace }) => {
  const tell = useTell();
  return (
    <Defect>
      <Suspense fallback={<p className="empty-words">{tell('Fetching this screen …')}</p>}>
        <PeopleScreen place={place} />
      </Suspense>
    </Defect>
  );
};

const MINUTE_MS = 60_000;

/** The clock by the minute: records grow stale while a screen stands open. */
const useClock = (): number => {
  const [nowMs, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), MINUTE_MS);
    return () => clearInterval(timer);
  }, []);
  return nowMs;
};

/**
 * The house speaks the language of the device, and the screens the words of the house. One value
 * as long as nothing in it changed, so that a screen is not drawn for the sake of the wall.
 */
const useSpokenWork = (reckoning: Reckoning | null, { house, show, state }: InView) => {
  const spoken = useSpoken();
  const { tongue } = spoken.voice;
  const work = useMemo((): Work | null => {
    if (reckoning === null) return null;
    const own = tongue === undefined ? reckoning.house : { ...reckoning.house, tongue };
    return { ...reckoning, house: own, kept: { house, show, state } };
  }, [reckoning, house, show, state, tongue]);
  const words = work?.house.words ?? 'US';
  const ofHouse = useMemo(
    (): Spoken => ({ ...spoken, voice: { words, tongue } }),
    [spoken, words, tongue],
  );
  return [work, ofHouse] as const;
};

/** Tells the rows that go ahead of the page what the page has come up to. */
const useRowsSettled = (
  reckoning: Reckoning | null,
  { house, show, state }: InView,
  isList: boolean,
): void => {
  const rows = useContext(RowsAheadContext);
  const [houseId, showId, stateId] = [house.id, show.id, state?.id ?? null];
  useEffect(() => {
    const ids = { house: houseId, show: showId, state: stateId };
    rows.settle(isList && reckoning !== null ? { reckoning, ids } : null);
  }, [rows, reckoning, houseId, showId, stateId, isList]);
  useEffect(() => () => rows.settle(null), [rows]);
};

type OfSet = Extract<Place, { readonly set: string }>;

const isOfSet = (place: Place): place is OfSet => 'set' in place;

/** The set that a screen is about, its sheets too; null where it is about all. */
const setOf = (place: Place): string | null => {
  if (isOfSet(place)) return place.set;
  if (place.kind === 'house' && place.part === 'found') return place.inside ?? null;
  if (place.kind === 'live' && place.path[0] === 'set') return place.path[1] ?? null;
  return place.kind === 'sheets' ? (place.sheet?.split('/')[1] ?? null) : null;
};

/** The set last looked at stays in hand on the other screens. */
const useSetInHand = (place: Place, work: Reckoning | null) => {
  const [taken, take] = useState<string | null>(null);
  const named = setOf(place);
  // A sheet may be of a gallery or of a moment, and no set is called so.
  const isSet = place.kind !== 'sheets' || (work?.sets.some(({ id }) => id === named) ?? false);
  const asked = isSet ? named : null;
  useEffect(() => {
    if (asked !== null) take(asked);
  }, [asked]);
  const first = work?.sets.find(({ set }) => set.hang !== null) ?? work?.sets[0];
  return [asked ?? taken ?? first?.id ?? null, take] as const;
};

const titleOf = (place: Place, { sets, house }: Reckoning): string => {
  if (!isOfSet(place))
    return phrase(
      house,
      {
        hangList: message('Hang list'),
        sheets: message('Sheets'),
        house: message('House'),
        whichSet: message('Which set?'),
        anotherHouse: message('Another house'),
        bringIn: message('Bring in'),
        takeOut: message('Take out'),
        selfCheck: message('Self-check'),
        thisServer: message('This server'),
        people: message('People'),
        notes: message('Notes'),
        live: message('Live'),
        drill: message('Drill'),
        documents: message('Documents'),
        nowhere: message('Nowhere'),
      }[place.kind],
    );
  const hang = sets.find(({ id }) => id === place.set)?.set.hang;
  const set = `${place.set}, ${hang?.name ?? phrase(house, 'empty')}`;
  const titles = {
    set: message('Set'),
    order: message('Order of work, set'),
    whatIf: message('What if, set'),
    compare: message('Beside'),
  };
  return `${phrase(house, titles[place.kind])} ${set}`;
};

const Workspace = ({ open, view }: { readonly open: Open; readonly view: InView }) => {
  const keeper = useKeeper();
  const { place } = useAddress();
  const { answer, isBehind } = useReckoning(view, useClock());
  const reckoning = answer.ok ? answer.value : null;
  const [work, spoken] = useSpokenWork(reckoning, view);
  const houseNow = useRef(reckoning?.house ?? null);
  useEffect(() => {
    houseNow.current = reckoning?.house ?? null;
  });
  const showId = view.show.id;
  const editing = useMemo(
    () => editingOf(keeper, showId, () => houseNow.current),
    [keeper, showId],
  );
  const [setInHand, takeSet] = useSetInHand(place, reckoning);
  const takeGently = useGently(takeSet);
  useRowsSettled(reckoning, view, place.kind === 'hangList');
  const noticed = [view.show.id, view.house.id, ...(view.state ? [view.state.id] : [])];
  // Where all documents are shown, an edit of any of them can be taken back.
  const ids = place.kind === 'documents' ? Object.keys(open.documents) : noticed;
  useUndoKeys(ids);
  const isDemo = open.databases.inHand === 'demo' || view.house.document['demo'] === true;
  if (!answer.ok || work === null) {
    return (
      <Frame isDemo={isDemo} title="Not understood">
        <TitleStrip open={open} view={view} ids={ids} setInHand={setInHand} />
        <OrDocuments open={open} place={place}>
          <PageNews open={open} />
          {answer.ok ? null : <NotRead error={answer.error} />}
        </OrDocuments>
      </Frame>
    );
  }
  if (isAtPost(place)) return <AtPost {...{ place, work, spoken, isDemo }} />;
  return (
    <WorkContext value={work}>
      <EditingContext value={editing}>
        <SpokenContext value={spoken}>
          <Frame isDemo={isDemo} title={titleOf(place, work)}>
            <TitleStrip open={open} view={view} ids={ids} setInHand={setInHand} />
            <main aria-busy={isBehind}>
              <Behind isBehind={isBehind} />
              <PageNews open={open} />
              <SelfCheckNotice place={place} />
              <SaveNotices documents={[view.show, view.house, view.state]} />
              <Wall setInHand={setInHand} onTake={takeSet} />
              <Defect key={placeKey(place)}>
                <Suspense fallback={<p className="empty-words">Fetching this screen …</p>}>
                  <Screen {...{ place, setInHand, open, noticed, takeGently }} onTake={takeSet} />
                </Suspense>
              </Defect>
            </main>
          </Frame>
        </SpokenContext>
      </EditingContext>
    </WorkContext>
  );
};

type LivePlace = Extract<Place, { readonly kind: 'live' }>;

const isAtPost = (place: Place): place is LivePlace =>
  place.kind === 'live' && place.path[0] === 'post';

type AtPostProps = {
  readonly place: LivePlace;
  readonly work: Work;
  readonly spoken: Spoken;
  readonly isDemo: boolean;
};

/** A post of a call has the whole screen: one action, at arm's length. */
const AtPost = ({ place, work, spoken, isDemo }: AtPostProps) => (
  <WorkContext value={work}>
    <SpokenContext value={spoken}>
      <Frame isDemo={isDemo} title={titleOf(place, work)}>
        <main>
          <SelfCheckNotice place={place} />
          <Defect key={place.path.join('/')}>
            <Suspense fallback={<p className="empty-words">Fetching this screen …</p>}>
              <LiveScreen path={place.path} />
            </Suspense>
          </Defect>
        </main>
      </Frame>
    </SpokenContext>
  </WorkContext>
);

/** Seen only where it takes longer than a blink; the page says it is busy from the first. */
const Behind = ({ isBehind }: { readonly isBehind: boolean }) => {
  const tell = useTell();
  return isBehind ? (
    <p className="behind">{tell('Working the house out anew; figures are from before.')}</p>
  ) : null;
};

/** A screen that failed is tried afresh when another is opened. */
const placeKey = (place: Place): string =>
  isOfSet(place) ? `${place.kind} ${place.set}` : place.kind;

type ScreenProps = {
  readonly place: Place;
  readonly setInHand: string | null;
  readonly onTake: (set: string) => void;
  readonly takeGently: (set: string) => void;
  readonly open: Open;
  /** Documents in view, whose notices stand above. */
  readonly noticed: readonly string[];
};

const Screen = ({ place, setInHand, onTake, takeGently, open, noticed }: ScreenProps) => {
  switch (place.kind) {
    case 'hangList':
      return <HangListPage setInHand={setInHand} onTake={takeGently} />;
    case 'set':
      return <SetPage id={place.set} />;
    case 'order':
      return <OrderPage place={place} />;
    case 'sheets':
      return <SheetsPage id={place.sheet} />;
    case 'house':
      return (
        <HouseScreen
          place={place}
          databases={open.databases}
          setInHand={setInHand}
          onTake={onTake}
        />
      );
    case 'whichSet':
      return <WhichSetPage key={place.piece} piece={place.piece} />;
    case 'bringIn':
      return <BringInPage />;
    case 'takeOut':
      return <TakeOutPage at={place.at} />;
    case 'whatIf':
      return <WhatIfPage id={place.set} change={place.change} />;
    case 'compare':
      return <ComparePage place={place} />;
    case 'anotherHouse':
      return <AnotherHousePage place={place} open={open} />;
    case 'selfCheck':
      return <SelfCheckPage />;
    case 'thisServer':
      return <ThisServerPage />;
    case 'people':
      return <PeopleScreen place={place} />;
    case 'notes':
      return <NotesPage />;
    case 'live':
      return <LiveScreen path={place.path} />;
    case 'drill':
      return <DrillPage />;
    case 'documents':
      return <DocumentsScreen place={place} open={open} noticed={noticed} />;
    case 'nowhere':
      return <Nowhere path={place.path} />;
    default:
      return unreachable(place);
  }
};
