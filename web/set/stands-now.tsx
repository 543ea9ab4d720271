/** How the set stands by the last record: direction in words, what holds it, who says so. */
import { type GlyphName, glyphWord, tradeWord, wallSigns } from '#drawings';
import { lockHoldOf } from '#house';
import { sayMeasure, sayMoment } from '#sheets';
import { Glyph } from '../drawing/glyph-view.tsx';
import { knownBy } from '../hang-list/known-by.tsx';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';

type Fact = {
  readonly glyph: GlyphName | null;
  readonly words: string;
  readonly more: string;
  readonly isNotHeld?: boolean;
};

const imbalanceSaid = (value: number, { house }: Work): string =>
  sayMeasure({ value, kind: 'imbalance' }, house);

const lengthSaid = (value: number, { house }: Work): string =>
  sayMeasure({ value, kind: 'length' }, house);

const limitSaid = (value: number, { house }: Work): string =>
  sayMeasure({ value, kind: 'force' }, house, { round: 'down' });

const balanceFact = ({ set }: SetReckoning, work: Work): Fact => {
  const { state, imbalance } = set.recorded;
  const { balance } = wallSigns(set, work.house, work.nowMs);
  const { height } = state;
  const at =
    height === null
      ? 'height not recorded'
      : `${tradeWord(work.house, 'batten')} at ${lengthSaid(height.high, work)}`;
  if (set.lineSet.arbor === null) return { glyph: null, words: at, more: 'no balance to show' };
  if (!imbalance.known) {
    return { glyph: 'unknown', words: 'Direction not known', more: imbalance.needs.join('; ') };
  }
  const { low, high } = imbalance.value;
  const words =
    low === high
      ? imbalanceSaid(low, work)
      : `${imbalanceSaid(low, work)} to ${imbalanceSaid(high, work)}`;
  // What overrules the sign on the wall stands in the other two; here the direction is told.
  const way = low > 0 ? 'battenHeavy' : high < 0 ? 'arborHeavy' : balance;
  const isOverruled = balance === 'lockedOut' || balance === 'stale';
  return { glyph: isOverruled ? way : balance, words, more: at };
};

const holdFact = ({ set }: SetReckoning, work: Work): Fact => {
  const { hold } = wallSigns(set, work.house, work.nowMs);
  const { lock, ring } = set.recorded.state;
  if (hold === null) {
    const kind = set.lineSet.suspension;
    return { glyph: null, words: 'No rope lock', more: kind === 'motor' ? 'a motor set' : 'hemp' };
  }
  const held = lockHoldOf(set.lineSet, work.house.rules);
  const limit = held.known ? `${limitSaid(held.value, work)} each way` : 'limit not known';
  const ringed = ring === null ? 'ring not recorded' : ring === 'on' ? 'ringed' : 'ring off';
  const closed = lock === null ? 'lock not recorded' : `lock ${lock}`;
  const words = hold === 'unknown' ? 'hold not known' : glyphWord(work.house, hold);
  return {
    glyph: hold,
    words: words.charAt(0).toUpperCase() + words.slice(1),
    more: hold === 'lock' ? `${limit}, ${ringed}` : `${closed}, ${ringed}`,
    isNotHeld: hold === 'danger',
  };
};

const knownFact = ({ set }: SetReckoning, work: Work): Fact => {
  const { glyph, words } = knownBy(set, work.house, work.nowMs);
  const { at, by, second } = set.recorded.state.knowledge;
  const when = at === null ? 'no time given' : sayMoment(at);
  const who = by === null ? 'nobody named' : second === null ? by : `${by} and ${second}`;
  return {
    glyph,
    words: words.charAt(0).toUpperCase() + words.slice(1),
    more: at === null && by === null ? 'nobody has recorded it' : `${when}, ${who}`,
  };
};

export const StandsNow = ({ each }: { readonly each: SetReckoning }) => {
  const work = useWork();
  const mirrored = work.house.stage.operatingSide === 'stageLeft';
  const facts = [balanceFact(each, work), holdFact(each, work), knownFact(each, work)];
  return (
    <dl className="stands-now" aria-label="As recorded">
      {facts.map(({ glyph, words, more, isNotHeld }, index) => (
        <div key={['balance', 'held', 'known'][index]} className={isNotHeld ? 'not-held' : ''}>
          <dt className="only-said">{['balance', 'held by', 'known by'][index]}</dt>
          <dd>
            {glyph === null ? null : <Glyph name={glyph} size={30} mirrored={mirrored} />}
            <span>
              <b>{words}</b>
              <small>{more}</small>
            </span>
          </dd>
        </div>
      ))}
    </dl>
  );
};
