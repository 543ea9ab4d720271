/** The house as it is found on a walk round: what stands there, who looked, and what is left. */
import type { Place } from '../address/address.ts';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { FoundSet } from './found-set.tsx';
import { GalleryCounts } from './gallery-counts.tsx';
import { Samples } from './samples.tsx';
import { walkedSets, walkOf } from './walk.ts';
import { WalkTable } from './walk-table.tsx';

type FoundProps = { readonly place: Extract<Place, { readonly kind: 'house' }> };

export const HouseFound = ({ place }: FoundProps) => {
  const tell = useTell();
  const { house, sets } = useWork();
  const walk = walkOf(house, sets);
  const order = walkedSets(walk);
  const { inside } = place;
  const index = order.findIndex(({ id }) => id === inside);
  const each = order[index];
  return (
    <>
      <div className="house-found">
        {inside === undefined ? (
          <>
            <WalkTable walk={walk} />
            <GalleryCounts />
            <Samples />
          </>
        ) : each === undefined ? (
          <Notice degree="caution" title={tell('this house has no set {id}', { id: inside })}>
            <p>{tell('Nothing else is shown in its place.')}</p>
          </Notice>
        ) : (
          <FoundSet
            key={each.id}
            each={each}
            before={order[index - 1]?.id ?? null}
            after={order[index + 1]?.id ?? null}
          />
        )}
      </div>
      <TitleBlock
        drawing={
          each === undefined ? tell('House as found') : tell('As found, set {id}', { id: each.id })
        }
        scale={tell('no drawing')}
      />
    </>
  );
};
