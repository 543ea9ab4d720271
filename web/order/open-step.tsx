/** One step whole: the picture large, and everything that a crew is told of it. */
import { type ReactNode, useCallback, useId } from 'react';
import type { SetAssessment } from '#assessment';
import { orderStepDrawing, tradeWord } from '#drawings';
import type { Breach } from '#rules';
import { energyWords, type SaidStep, sayFinding, sayForce, sayMeasure } from '#sheets';
import type { OrderPhysics } from '#state';
import { Glyph } from '../drawing/glyph-view.tsx';
import { Notice } from '../frame/notice.tsx';
import { useWork } from '../reckoning/use-work.ts';
import { Drawn } from './drawn.tsx';
import { type Moment, nameOfItem } from './moments.ts';

type OpenProps = {
  readonly moment: Moment;
  readonly thicker: number;
  /** Whether a crew may work by the order that it belongs to. */
  readonly isWorked: boolean;
  readonly children?: ReactNode;
};

const LETTER = 14;
const HEIGHT = 400;

export const OpenStep = ({ moment, thicker, isWorked, children }: OpenProps) => {
  const { house } = useWork();
  const id = useId();
  const { number, cell, said, drawn } = moment;
  const draw = useCallback(
    (width: number) =>
      orderStepDrawing(drawn, house, {
        width: Math.min(width, 480),
        height: HEIGHT,
        letter: LETTER,
        isLettered: true,
        thicker,
      }),
    [drawn, house, thicker],
  );
  return (
    <section className="open-step" aria-labelledby={id}>
      <Drawn draw={draw} />
      <div className="open-words">
        <h3 id={id}>{number === 0 ? 'Now: how it stands' : `Step ${number}: ${cell.title}`}</h3>
        {moment.breaches.map((breach) => (
          <BrokenRule
            key={`${breach.rule} ${breach.where} ${breach.byN}`}
            breach={breach}
            bricks={drawn.physics.bricks}
            set={drawn.set}
          />
        ))}
        {said === null ? (
          <StandsNow moment={moment} />
        ) : isWorked ? (
          <Said said={said} moment={moment} />
        ) : (
          <OnlyJudged said={said} moment={moment} />
        )}
        {children}
      </div>
    </section>
  );
};

type BrokenProps = {
  readonly breach: Breach;
  readonly bricks: OrderPhysics['bricks'];
  readonly set: SetAssessment;
};

/** Rule, place, margin, and what it would set free. */
export const BrokenRule = ({ breach, bricks, set }: BrokenProps) => {
  const { house } = useWork();
  const { rule, byN, where, says, releasableJ, finding } = breach;
  const { sentence } = sayFinding(finding, house, nameOfItem(set));
  const at = sayMeasure({ value: where, kind: 'length' }, house);
  const past = byN === null ? '' : `, past its limit by ${sayForce(byN, house, 'up')}`;
  return (
    <Notice degree="danger" title={`${says} (${rule})`}>
      <p>{sentence}</p>
      <p>
        {capital(tradeWord(house, 'batten'))} at {at}
        {past}.
        {releasableJ === null
          ? ''
          : ` If nothing held it: ${energyWords(releasableJ, { bricks }, house)}.`}
      </p>
    </Notice>
  );
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

type Row = readonly [term: string, words: ReactNode];

const Rows = ({ rows }: { readonly rows: readonly Row[] }) => (
  <dl className="step-rows">
    {rows.map(([term, words]) => (
      <div key={term}>
        <dt>{term}</dt>
        <dd>{words}</dd>
      </div>
    ))}
  </dl>
);

const balanceRow = ({ cell, sign }: Moment, mirrored: boolean): Row => [
  'balance',
  <span key="balance" className="signed">
    <Glyph name={sign} size={24} mirrored={mirrored} />
    {cell.balance}
  </span>,
];

const StandsNow = ({ moment }: { readonly moment: Moment }) => {
  const { house } = useWork();
  const { cell } = moment;
  const mirrored = house.stage.operatingSide === 'stageLeft';
  return (
    <Rows
      rows={[
        balanceRow(moment, mirrored),
        ['height', cell.height],
        ['held', cell.held],
        ['if nothing held it', cell.energy ?? 'not reckoned'],
      ]}
    />
  );
};

/** Of an order that nobody is to work by: what it does and where that leads, not how to do it. */
const OnlyJudged = ({ said, moment }: { readonly said: SaidStep; readonly moment: Moment }) => {
  const { house } = useWork();
  const { cell, drawn } = moment;
  const mirrored = house.stage.operatingSide === 'stageLeft';
  const { holdInN, holdOutN } = drawn.state;
  const [inward, outward] = [holdInN, holdOutN].map((holdN) => sayForce(holdN, house, 'down'));
  return (
    <Rows
      rows={[
        ['who', said.who],
        ['does', said.does],
        balanceRow(moment, mirrored),
        ['height', cell.height],
        ['held', cell.held],
        ['holds', `against coming in ${inward}, against going out ${outward}`],
        ['if nothing held it', cell.energy ?? 'not reckoned'],
        ['not to work by', 'the order is not accepted, so it is not said how to do it'],
      ]}
    />
  );
};

const LIMIT_WORDS = {
  planning: 'within its planning limit: one miscounted brick is still held',
  nominal: 'past its planning limit, within its nominal one: its run is closed and empty',
} as const;

const Said = ({ said, moment }: { readonly said: SaidStep; readonly moment: Moment }) => {
  const { house } = useWork();
  const mirrored = house.stage.operatingSide === 'stageLeft';
  const { limit } = moment.drawn.state;
  const { call, answer } = said;
  return (
    <Rows
      rows={[
        ['who', said.who],
        ['where', said.where],
        ['do', <strong key="do">{said.does}</strong>],
        ['expect', said.expect.join(' ')],
        balanceRow(moment, mirrored),
        ['leans on the lock', limit === null ? 'no' : LIMIT_WORDS[limit]],
        ['if nothing held it', moment.cell.energy ?? 'not reckoned'],
        ['stop if', said.stopIf],
        ['give it up', said.abandon],
        ['closed', said.zone],
        ...(said.clear === null ? [] : [['keep away', said.clear] as const]),
        [
          'spoken',
          <span key="spoken" className="spoken">
            <span>
              {call.by}: “{call.says}”
            </span>
            <span>
              {answer.by}: “{answer.says}”
            </span>
            <span>When done: “{said.done}”</span>
          </span>,
        ],
        ['may it wait', said.pause.words],
        ['proofs due', said.proofs.length === 0 ? 'none named' : said.proofs.join('; ')],
      ]}
    />
  );
};
