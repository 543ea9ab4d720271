/** How much more may hang at the place of the load in hand, and what would stop it. */
import { useState } from 'react';
import type { SetStructure, StructureState } from '#assessment';
import { type BattenLimits, type Heaviest, heaviestAt } from '#beam';
import { placeWords } from '#drawings';
import type { House, LineSet } from '#house';
import { unreachable } from '#outcome';
import { formatMass, kilograms } from '#quantities';
import { phrase } from '#texts';
import { useTell } from '../language/use-tell.ts';
import type { Movable } from './load-strip.tsx';
import { caseAfter, type WhatIf } from './what-if.ts';

type Props = {
  readonly structure: SetStructure;
  readonly state: StructureState;
  readonly whatIf: WhatIf;
  readonly house: House;
  readonly lineSet: LineSet;
  readonly at: Movable;
  readonly items: readonly string[];
};

/** The live limit counts what hangs; fittings are among the loads and belong to the batten. */
const limitsOf = ({ structure, state, lineSet, items }: Props): BattenLimits => {
  const { lineLimit, liveLimit } = lineSet;
  const { yieldStrength } = structure.pipe;
  const fittingsKg = state.loads.reduce(
    (sum, { of, load }) => (items.includes(of) ? sum : sum + load.mass),
    0,
  );
  return {
    ...(lineLimit.known ? { line: lineLimit.value } : {}),
    ...(yieldStrength === undefined ? {} : { utilisation: 1 }),
    ...(liveLimit.known ? { liveMass: liveLimit.value + fittingsKg } : {}),
  };
};

const stopWords = ({ stoppedBy, line }: Heaviest, house: House): string => {
  switch (stoppedBy) {
    case 'line':
      return line === null
        ? phrase(house, 'a line is at its limit')
        : phrase(house, 'line {line} is at its limit', { line: line + 1 });
    case 'bending':
      return phrase(house, 'the pipe bends as much as is allowed');
    case 'liveMass':
      return phrase(house, 'all that hangs is what the batten may carry');
    case 'nothing':
      return phrase(house, 'the search ends, with every limit still held');
    case 'tipping':
      return phrase(house, 'the batten is about to tip over');
    default:
      return unreachable(stoppedBy);
  }
};

const heldWords = ({ line, utilisation, liveMass }: BattenLimits, house: House): string => {
  const held = [
    ...(line === undefined ? [] : [phrase(house, 'the limit of a line')]),
    ...(utilisation === undefined ? [] : [phrase(house, 'allowed bending')]),
    ...(liveMass === undefined ? [] : [phrase(house, 'the live limit')]),
  ];
  return held.join(', ');
};

const answerOf = (props: Props): string => {
  const { structure, state, whatIf, house, at } = props;
  const limits = limitsOf(props);
  const found = heaviestAt(caseAfter(structure, state, whatIf), at.x, limits);
  if (!found.ok) return phrase(house, 'Not looked for: no limit of this set is known.');
  const place = placeWords(house, at.x);
  const mass = formatMass(kilograms(found.value.mass), house, { round: 'down' });
  const stop = stopWords(found.value, house);
  const answer =
    found.value.mass === 0
      ? phrase(house, 'Nothing more at {place}: {stop}.', { place, stop })
      : phrase(house, 'At {place} {mass} more may hang; then {stop}.', { place, mass, stop });
  const held = phrase(house, 'Held to: {held}. Not held to: blocks, beams, gallery, balance.', {
    held: heldWords(limits, house),
  });
  return `${answer} ${held}`;
};

/** Asked for one place and one change; another place asks anew. */
export const HeaviestHere = (props: Props) => {
  const tell = useTell();
  const { state, whatIf, at } = props;
  const [asked, setAsked] = useState<{
    readonly state: StructureState;
    readonly whatIf: WhatIf;
    readonly x: number;
    readonly answer: string;
  } | null>(null);
  const isCurrent =
    asked !== null && asked.state === state && asked.whatIf === whatIf && asked.x === at.x;
  return (
    <div className="heaviest">
      <button
        type="button"
        onClick={() => setAsked({ state, whatIf, x: at.x, answer: answerOf(props) })}
      >
        {tell('Heaviest load here')}
      </button>
      <p role="status">{isCurrent ? asked.answer : ''}</p>
    </div>
  );
};
