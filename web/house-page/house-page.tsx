/** The house as it is known: each limit with its source, what is unknown, and which house it is. */
import type { ReactNode } from 'react';
import { message } from '#texts';
import { Link } from '../address/link.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import type { Databases } from '../keeping/server.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { Battens } from './battens.tsx';
import { BrickKinds } from './brick-kinds.tsx';
import { DatabaseStep } from './database-step.tsx';
import { DocumentTexts } from './document-texts.tsx';
import { Galleries } from './galleries.tsx';
import { LiftLines, LoftWells } from './lift-lines.tsx';
import { RuleTable, StageTable } from './limits.tsx';
import { SetTypes } from './set-types.tsx';
import { Unknowns } from './unknowns.tsx';

type EnterProps = {
  readonly part: string;
  readonly words: string;
  readonly children: ReactNode;
};

/** What is read here is typed into its part of the form. */
const Enter = ({ part, words, children }: EnterProps) => {
  const tell = useTell();
  return (
    <div className="house-entered">
      {children}
      <Link to={{ kind: 'house', part: 'enter', at: null, inside: part }}>
        {tell('Enter or change: {what}', { what: tell(words) })}
      </Link>
    </div>
  );
};

export const HousePage = ({ databases }: { readonly databases: Databases }) => {
  const tell = useTell();
  const { house } = useWork();
  const units =
    house.units === 'customary' ? tell('feet and pounds') : tell('metres and kilograms');
  const names = { units, words: house.words, count: house.lineSets.length };
  return (
    <>
      <div className="page-head">
        <p className="quiet">
          {house.stage.operatingSide === 'stageRight'
            ? tell('{units}, {words} trade words, arbors at stage right, {count} sets', names)
            : tell('{units}, {words} trade words, arbors at stage left, {count} sets', names)}
        </p>
      </div>
      <div className="house-page">
        <DatabaseStep databases={databases} />
        <Unknowns />
        <Enter part="rules" words={message('rules')}>
          <RuleTable />
        </Enter>
        <Enter part="stage" words={message('stage')}>
          <StageTable />
        </Enter>
        <Enter part="bricks" words={message('bricks')}>
          <BrickKinds />
        </Enter>
        <Enter part="galleries" words={message('galleries and rails')}>
          <Galleries />
        </Enter>
        <Enter part="sets" words={message('line sets')}>
          <SetTypes />
        </Enter>
        <Enter part="kinds" words={message('kinds of set')}>
          <Battens />
          <LiftLines />
        </Enter>
        <Enter part="beams" words={message('beam and loft wells')}>
          <LoftWells />
        </Enter>
        <DocumentTexts />
      </div>
      <TitleBlock drawing={tell('House, its limits')} scale={tell('no drawing')} />
    </>
  );
};
