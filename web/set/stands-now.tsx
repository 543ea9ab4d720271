/** How the set stands by the last record: direction in words, what holds it, who says so. */
import { type GlyphName, glyphWord, wallSigns } from '#drawings';
import { lockHoldOf } from '#house';
import { sayMeasure, sayMoment } from '#sheets';
import { message, phrase, told } from '#texts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { knownBy } from '../hang-list/known-by.tsx';
import { useTell } from '../language/use-tell.ts';
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
  const { house } = work;
  const { state, imbalance } = set.recorded;
  const { balance } = wallSigns(set, work.house, work.nowMs);
  const { height } = state;
  const at =
    height === null
      ? phrase(house, 'height not recorded')
      : phrase(house, 'batten at {at}', { at: lengthSaid(height.high, work) });
  if (set.lineSet.arbor === null) {
    return { glyph: null, words: at, more: phrase(house, 'no balance to show') };
  }
  if (!imbalance.known) {
    return {
      glyph: 'unknown',
      words: phrase(house, 'Direction not known'),
      more: told(house, imbalance.needs.join('; ')),
    };
  }
  const { low, high } = imbalance.value;
  const words =
    low === high
      ? imbalanceSaid(low, work)
      : phrase(house, '{low} to {high}', {
          low: imbalanceSaid(low, work),
          high: imbalanceSaid(high, work),
        });
  // What overrules the sign on the wall stands in the other two; here the direction is told.
  const way = low > 0 ? 'battenHeavy' : high < 0 ? 'arborHeavy' : balance;
  const isOverruled = balance === 'lockedOut' || balance === 'stale';
  return { glyph: isOverruled ? way : balance, words, more: at };
};

const RING_WORDS = {
  on: message('ringed'),
  off: message('ring off'),
  unknown: message('ring not recorded'),
} as const;

const LOCK_WORDS = {
  closed: message('lock closed'),
  open: message('lock open'),
  unknown: message('lock not recorded'),
} as const;

const holdFact = ({ set }: SetReckoning, work: Work): Fact => {
  const { house } = work;
  const { hold } = wallSigns(set, house, work.nowMs);
  const { lock, ring } = set.recorded.state;
  if (hold === null) {
    const kind = set.lineSet.suspension;
    return {
      glyph: null,
      words: phrase(house, 'No rope lock'),
      more: kind === 'motor' ? phrase(house, 'a motor set') : phrase(house, 'hemp'),
    };
  }
  const held = lockHoldOf(set.lineSet, house.rules);
  const limit = held.known
    ? phrase(house, '{measure} each way', { measure: limitSaid(held.value, work) })
    : phrase(house, 'limit not known');
  const ringed = phrase(house, RING_WORDS[ring ?? 'unknown']);
  const closed = phrase(house, LOCK_WORDS[lock ?? 'unknown']);
  const words = hold === 'unknown' ? phrase(house, 'hold not known') : glyphWord(house, hold);
  return {
    glyph: hold,
    words: words.charAt(0).toUpperCase() + words.slice(1),
    more: hold === 'lock' ? `${limit}, ${ringed}` : `${closed}, ${ringed}`,
    isNotHeld: hold === 'danger',
  };
};

const knownFact = ({ set }: SetReckoning, work: Work): Fact => {
  const { house } = work;
  const { glyph, words } = knownBy(set, house, work.nowMs);
  const { at, by, second } = set.recorded.state.knowledge;
  const when = at === null ? phrase(house, 'no time given') : sayMoment(at, house);
  const who =
    by === null
      ? phrase(house, 'nobody named')
      : second === null
        ? by
        : phrase(house, '{by} and {second}', { by, second });
  return {
    glyph,
    words: words.charAt(0).toUpperCase() + words.slice(1),
    more: at === null && by === null ? phrase(house, 'nobody has recorded it') : `${when}, ${who}`,
  };
};

/** In their order. */
const FACTS = [message('balance'), message('held by'), message('known by')] as const;

export const StandsNow = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const work = useWork();
  const mirrored = work.house.stage.operatingSide === 'stageLeft';
  const facts = [balanceFact(each, work), holdFact(each, work), knownFact(each, work)];
  return (
    <dl className="stands-now" aria-label={tell('As recorded')}>
      {facts.map(({ glyph, words, more, isNotHeld }, index) => (
        <div key={FACTS[index]} className={isNotHeld ? 'not-held' : ''}>
          <dt className="only-said">{tell(FACTS[index] ?? '')}</dt>
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
