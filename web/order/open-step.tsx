/** One step whole: the picture large, and everything that a crew is told of it. */
import { type ReactNode, useCallback, useId } from 'react';
import type { SetAssessment } from '#assessment';
import { orderStepDrawing } from '#drawings';
import type { Breach } from '#rules';
import { energyWords, type SaidStep, sayFinding, sayForce, sayMeasure } from '#sheets';
import type { OrderPhysics } from '#state';
import { message, type Names } from '#texts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { Notice } from '../frame/notice.tsx';
import { useTell } from '../language/use-tell.ts';
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
  const tell = useTell();
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
        <h3 id={id}>
          {number === 0
            ? tell('Now: how it stands')
            : tell('Step {number}: {title}', { number, title: cell.title })}
        </h3>
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
  const tell = useTell();
  const { house } = useWork();
  const { rule, byN, where, says, releasableJ, finding } = breach;
  const { sentence } = sayFinding(finding, house, nameOfItem(set));
  const at = sayMeasure({ value: where, kind: 'length' }, house);
  const energy = releasableJ === null ? null : energyWords(releasableJ, { bricks }, house);
  return (
    <Notice degree="danger" title={`${tell(says)} (${rule})`}>
      <p>{sentence}</p>
      <p>
        {byN === null
          ? tell('Batten at {at}.', { at })
          : tell('Batten at {at}, past its limit by {past}.', {
              at,
              past: sayForce(byN, house, 'up'),
            })}
        {energy === null ? '' : ` ${tell('If nothing held it: {energy}.', { energy })}`}
      </p>
    </Notice>
  );
};

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

type Tell = (text: string, names?: Names) => string;

const balanceRow = ({ cell, sign }: Moment, mirrored: boolean, tell: Tell): Row => [
  tell('balance'),
  <span key="balance" className="signed">
    <Glyph name={sign} size={24} mirrored={mirrored} />
    {cell.balance}
  </span>,
];

const StandsNow = ({ moment }: { readonly moment: Moment }) => {
  const tell = useTell();
  const { house } = useWork();
  const { cell } = moment;
  const mirrored = house.stage.operatingSide === 'stageLeft';
  return (
    <Rows
      rows={[
        balanceRow(moment, mirrored, tell),
        [tell('height'), cell.height],
        [tell('held'), cell.held],
        [tell('if nothing held it'), cell.energy ?? tell('not reckoned')],
      ]}
    />
  );
};

/** Of an order that nobody is to work by: what it does and where that leads, not how to do it. */
const OnlyJudged = ({ said, moment }: { readonly said: SaidStep; readonly moment: Moment }) => {
  const tell = useTell();
  const { house } = useWork();
  const { cell, drawn } = moment;
  const mirrored = house.stage.operatingSide === 'stageLeft';
  const { holdInN, holdOutN } = drawn.state;
  const inward = sayForce(holdInN, house, 'down');
  const outward = sayForce(holdOutN, house, 'down');
  return (
    <Rows
      rows={[
        [tell('who'), said.who],
        [tell('does'), said.does],
        balanceRow(moment, mirrored, tell),
        [tell('height'), cell.height],
        [tell('held'), cell.held],
        [
          tell('holds'),
          tell('against coming in {inward}, against going out {outward}', { inward, outward }),
        ],
        [tell('if nothing held it'), cell.energy ?? tell('not reckoned')],
        [tell('not to work by'), tell('the order is not accepted, so it is not said how to do it')],
      ]}
    />
  );
};

const LIMIT_WORDS = {
  planning: message('within its planning limit: one miscounted brick is still held'),
  nominal: message('past its planning limit, within its nominal one: its run is closed and empty'),
} as const;

const Said = ({ said, moment }: { readonly said: SaidStep; readonly moment: Moment }) => {
  const tell = useTell();
  const { house } = useWork();
  const mirrored = house.stage.operatingSide === 'stageLeft';
  const { limit } = moment.drawn.state;
  const { call, answer } = said;
  return (
    <Rows
      rows={[
        [tell('who'), said.who],
        [tell('where'), said.where],
        [tell('do'), <strong key="do">{said.does}</strong>],
        [tell('expect'), said.expect.join(' ')],
        balanceRow(moment, mirrored, tell),
        [tell('leans on the lock'), limit === null ? tell('no') : tell(LIMIT_WORDS[limit])],
        [tell('if nothing held it'), moment.cell.energy ?? tell('not reckoned')],
        [tell('stop if'), said.stopIf],
        [tell('give it up'), said.abandon],
        [tell('closed'), said.zone],
        ...(said.clear === null ? [] : [[tell('keep away'), said.clear] as const]),
        [
          tell('spoken'),
          <span key="spoken" className="spoken">
            <span>{tell('{by}: “{says}”', call)}</span>
            <span>{tell('{by}: “{says}”', answer)}</span>
            <span>{tell('When done: “{done}”', { done: said.done })}</span>
          </span>,
        ],
        [tell('may it wait'), said.pause.words],
        [
          tell('proofs due'),
          said.proofs.length === 0 ? tell('none named') : said.proofs.join('; '),
        ],
      ]}
    />
  );
};
