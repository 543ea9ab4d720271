/** Why something was not written down; what stood there stays. */
import type { Refusal } from '#outcome';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { useTell } from '../language/use-tell.ts';

export const NotWritten = ({ refusals }: { readonly refusals: readonly Refusal[] }) => {
  const tell = useTell();
  return refusals.length === 0 ? null : (
    <Notice degree="caution" title={tell('not written down, nothing changed')} isNews>
      <RefusalsWithPlace refusals={refusals} />
    </Notice>
  );
};
