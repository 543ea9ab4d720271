/** A failed self-check stands above every screen that rests on what failed. */
import { sayFailed } from '#sheets';
import type { Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { failingOn } from './screens.ts';
import { useChecks } from './use-checks.ts';

const WHO = {
  browser: 'self-check failed in this browser, which works out the screens',
  server: 'self-check failed on the server, which makes the prints',
} as const;

export const SelfCheckNotice = ({ place }: { readonly place: Place }) => (
  <>
    {failingOn(place, useChecks()).map(({ who, failed }) => (
      <Notice key={who} degree="danger" title={WHO[who]} isNews>
        <p>
          {sayFailed(failed)} <Link to={{ kind: 'selfCheck' }}>Open the self-check</Link>
        </p>
      </Notice>
    ))}
  </>
);
