/** A failed self-check stands above every screen that rests on what failed. */
import { sayFailed } from '#sheets';
import { message } from '#texts';
import type { Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import { failingOn } from './screens.ts';
import { useChecks } from './use-checks.ts';

const WHO = {
  browser: message('self-check failed in this browser, which works out the screens'),
  server: message('self-check failed on the server, which makes the prints'),
} as const;

export const SelfCheckNotice = ({ place }: { readonly place: Place }) => {
  const tell = useTell();
  const voice = useVoice();
  const failing = failingOn(place, useChecks());
  return (
    <>
      {failing.map(({ who, failed }) => (
        <Notice key={who} degree="danger" title={tell(WHO[who])} isNews>
          <p>
            {sayFailed(failed, voice)}{' '}
            <Link to={{ kind: 'selfCheck' }}>{tell('Open the self-check')}</Link>
          </p>
        </Notice>
      ))}
    </>
  );
};
