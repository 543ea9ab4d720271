/** From documents and address to a screen. States in between are screens too. */
import { lazy, Suspense, useEffect, useMemo, useRef, useState } from 'react';
import { unreachable } from '#outcome';
import type { Place } from './address/address.ts';
import { useAddress } from './address/use-address.ts';
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
import { useKeeper, useKeeperState, useKeeping } from './keeping/use-keeper.ts';
import { type InView, inView } from './reckoning/in-view.ts';
import { type Reckoning, reckon } from './reckoning/reckon.ts';
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

const WhichSetPage = lazy(async () => ({
  default: (await import('./which-set/which-set-page.tsx')).WhichSetPage,
}));
const SelfCheckPage = lazy(async () => ({
  default: (await import('./self-check/self-check-page.tsx')).SelfCheckPage,
}));

export const App = () => {
  useKeeping();
  useSelfChecks();
  const state = useKeeperState();
  const address = useAddress();
  if (state.phase === 'loading') return <Loading />;
  if (state.phase === 'failed') return <Failed title={state.title} unreached={state.unreached} />;
  const view = inView(state, address);
  if ('missing' in view) return <Missing what={view.missing} open={state} />;
  return (
    <Defect>
      <Hatches />
      <Workspace key={view.house.id + view.show.id} open={state} view={view} />
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

const useReckoning = ({ house, show, state }: InView, clockMs: number) => {
  const before = useRef<Reckoning | null>(null);
  const [houseRaw, showRaw, stateRaw] = [house.document, show.document, state?.document ?? null];
  const answer = useMemo(
    () => reckon({ house: houseRaw, show: showRaw, state: stateRaw }, clockMs, before.current),
    [houseRaw, showRaw, stateRaw, clockMs],
  );
  useEffect(() => {
    if (answer.ok) before.current = answer.value;
  }, [answer]);
  return answer;
};

/** The set that a screen is about, its sheets too; null where it is about all. */
const setOf = (place: Place): string | null => {
  if (place.kind === 'set' || place.kind === 'order') return place.set;
  return place.kind === 'sheets' ? (place.sheet?.split('/')[1] ?? null) : null;
};

/** The set last looked at stays in hand on the other screens. */
const useSetInHand = (place: Place, work: Reckoning | null) => {
  const [taken, take] = useState<string | null>(null);
  const asked = setOf(place);
  useEffect(() => {
    if (asked !== null) take(asked);
  }, [asked]);
  const first = work?.sets.find(({ set }) => set.hang !== null) ?? work?.sets[0];
  return [asked ?? taken ?? first?.id ?? null, take] as const;
};

const titleOf = (place: Place, { sets }: Reckoning): string => {
  if (place.kind !== 'set' && place.kind !== 'order')
    return {
      hangList: 'Hang list',
      sheets: 'Sheets',
      house: 'House',
      whichSet: 'Which set?',
      selfCheck: 'Self-check',
      nowhere: 'Nowhere',
    }[place.kind];
  const hang = sets.find(({ id }) => id === place.set)?.set.hang;
  const set = `${place.set}, ${hang?.name ?? 'empty'}`;
  return place.kind === 'set' ? `Set ${set}` : `Order of work, set ${set}`;
};

const Workspace = ({ open, view }: { readonly open: Open; readonly view: InView }) => {
  const keeper = useKeeper();
  const { place } = useAddress();
  const answer = useReckoning(view, useClock());
  const reckoning = answer.ok ? answer.value : null;
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
  const ids = [view.show.id, view.house.id, ...(view.state === null ? [] : [view.state.id])];
  useUndoKeys(ids);
  const isDemo = open.databases.inHand === 'demo' || view.house.document['demo'] === true;
  if (!answer.ok) {
    return (
      <Frame isDemo={isDemo} title="Not understood">
        <TitleStrip open={open} view={view} ids={ids} setInHand={setInHand} />
        <NotRead error={answer.error} />
      </Frame>
    );
  }
  const work: Work = { ...answer.value, kept: view };
  return (
    <WorkContext value={work}>
      <EditingContext value={editing}>
        <Frame isDemo={isDemo} title={titleOf(place, work)}>
          <TitleStrip open={open} view={view} ids={ids} setInHand={setInHand} />
          <main>
            <SelfCheckNotice place={place} />
            <SaveNotices documents={[view.show, view.house, view.state]} />
            <Wall setInHand={setInHand} onTake={takeSet} />
            <Defect key={placeKey(place)}>
              <Suspense fallback={<p className="empty-words">Fetching this screen …</p>}>
                <Screen place={place} setInHand={setInHand} onTake={takeSet} open={open} />
              </Suspense>
            </Defect>
          </main>
        </Frame>
      </EditingContext>
    </WorkContext>
  );
};

/** A screen that failed is tried afresh when another is opened. */
const placeKey = (place: Place): string =>
  place.kind === 'set' || place.kind === 'order' ? `${place.kind} ${place.set}` : place.kind;

type ScreenProps = {
  readonly place: Place;
  readonly setInHand: string | null;
  readonly onTake: (set: string) => void;
  readonly open: Open;
};

const Screen = ({ place, setInHand, onTake, open }: ScreenProps) => {
  switch (place.kind) {
    case 'hangList':
      return <HangListPage setInHand={setInHand} onTake={onTake} />;
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
    case 'selfCheck':
      return <SelfCheckPage />;
    case 'nowhere':
      return <Nowhere path={place.path} />;
    default:
      return unreachable(place);
  }
};
