/** The house as it is known: each limit with its source, what is unknown, and which house it is. */
import type { ReactNode } from 'react';
import { tradeWord } from '#drawings';
import { inHouseWords } from '#sheets';
import { Link } from '../address/link.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import type { Databases } from '../keeping/server.ts';
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
  const { house } = useWork();
  return (
    <div className="house-entered">
      {children}
      <Link to={{ kind: 'house', part: 'enter', at: null, inside: part }}>
        Enter or change: {inHouseWords(words, house)}
      </Link>
    </div>
  );
};

export const HousePage = ({ databases }: { readonly databases: Databases }) => {
  const { house } = useWork();
  const units = house.units === 'customary' ? 'feet and pounds' : 'metres and kilograms';
  return (
    <>
      <div className="page-head">
        <p className="quiet">
          {units}, {house.words} trade words, {tradeWord(house, 'arbor')}s at{' '}
          {house.stage.operatingSide === 'stageRight' ? 'stage right' : 'stage left'},{' '}
          {house.lineSets.length} {tradeWord(house, 'set')}s
        </p>
      </div>
      <div className="house-page">
        <DatabaseStep databases={databases} />
        <Unknowns />
        <Enter part="rules" words="rules">
          <RuleTable />
        </Enter>
        <Enter part="stage" words="stage">
          <StageTable />
        </Enter>
        <Enter part="bricks" words="bricks">
          <BrickKinds />
        </Enter>
        <Enter part="galleries" words="galleries and rails">
          <Galleries />
        </Enter>
        <Enter part="sets" words="line sets">
          <SetTypes />
        </Enter>
        <Enter part="kinds" words="kinds of set">
          <Battens />
          <LiftLines />
        </Enter>
        <Enter part="beams" words="beam and loft wells">
          <LoftWells />
        </Enter>
        <DocumentTexts />
      </div>
      <TitleBlock drawing="House, its limits" scale="no drawing" />
    </>
  );
};
