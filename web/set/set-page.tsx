/** One set whole: how it stands, how it balances over its travel, its bricks, its checks. */
import type { Basis } from '#house';
import { BattenPart } from '../batten/batten-part.tsx';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { GridArea } from '../grid/grid-area.tsx';
import { ItemsTable } from '../items/items-table.tsx';
import { at } from '../keeping/json.ts';
import { useTell } from '../language/use-tell.ts';
import { SetSaid } from '../live/set-said.tsx';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useSet, useWork } from '../reckoning/use-work.ts';
import { PrintLinks } from '../sheets-page/print-links.tsx';
import { BricksChoice } from './bricks-choice.tsx';
import { Checks } from './checks.tsx';
import { OrderInShort } from './order-in-short.tsx';
import { ProofsDue } from './proofs-due.tsx';
import { SetDrawings } from './set-drawings.tsx';
import { SetFindings } from './set-findings.tsx';
import { SetHead } from './set-head.tsx';
import { findBlock, useCard } from './use-card.ts';
import { useSetKeys } from './use-set-keys.ts';

export const SetPage = ({ id }: { readonly id: string }) => {
  const tell = useTell();
  const each = useSet(id);
  const { sets } = useWork();
  useSetKeys(
    sets.map((one) => one.id),
    id,
  );
  if (each === undefined) {
    return (
      <Notice degree="caution" title={tell('this house has no set {set}', { set: id })}>
        <p>
          {tell('Look along the wall, or type a number there. Nothing else is shown in its place.')}
        </p>
      </Notice>
    );
  }
  return <OneSet each={each} />;
};

const OneSet = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const { house, documents } = useWork();
  const card = useCard(each.id);
  const proofs = card && findBlock(card.blocks, 'proofs');
  const table = card && findBlock(card.blocks, 'table');
  const given = at(documents.show, ['given', 'basis']);
  const isHung = each.set.hang !== null;
  return (
    <>
      <SetHead each={each} />
      <SetFindings each={each} degree="stop" />
      <SetDrawings each={each} table={table ?? null} />
      <BattenPart set={each.set} house={house} />
      {isHung ? (
        <section className="set-part" aria-labelledby="items-head">
          <h2 id="items-head">{tell('What hangs here')}</h2>
          <GridArea>
            <ItemsTable
              each={each}
              house={house}
              given={typeof given === 'string' ? (given as Basis) : null}
            />
          </GridArea>
        </section>
      ) : null}
      {isHung && each.set.lineSet.arbor !== null ? <OrderInShort each={each} /> : null}
      <div className="set-columns">
        <Checks each={each} />
        <div className="set-middle">
          <BricksChoice each={each} />
          <ProofsDue proofs={proofs ?? null} />
          <section aria-labelledby="print-head">
            <h2 id="print-head">{tell('Print')}</h2>
            {card === undefined ? null : <PrintLinks sheet={card} />}
          </section>
        </div>
        <SetFindings each={each} degree="others" />
      </div>
      <SetSaid id={each.id} isHung={isHung} />
      <TitleBlock
        drawing={tell('Set {id}, plan and record', { id: each.id })}
        scale={tell('one height for all drawings')}
      />
    </>
  );
};
