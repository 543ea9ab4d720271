/** The house as it is known: each limit with its source, what is unknown, and which house it is. */
import { tradeWord } from '#drawings';
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
        <RuleTable />
        <StageTable />
        <BrickKinds />
        <Galleries />
        <SetTypes />
        <Battens />
        <LiftLines />
        <LoftWells />
        <DocumentTexts />
      </div>
      <TitleBlock drawing="House, its limits" scale="no drawing" />
    </>
  );
};
