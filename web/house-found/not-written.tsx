/** Why something was not written down; what stood there stays. */
import type { Refusal } from '#outcome';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';

export const NotWritten = ({ refusals }: { readonly refusals: readonly Refusal[] }) =>
  refusals.length === 0 ? null : (
    <Notice degree="caution" title="not written down, nothing changed" isNews>
      <RefusalsWithPlace refusals={refusals} />
    </Notice>
  );
