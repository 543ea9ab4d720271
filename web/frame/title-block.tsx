/** The title block that closes every screen at the foot right, and who types on this device. */

import { type ReactNode, useId, useState } from 'react';
import type { House } from '#house';
import { sayMoment, unitWords } from '#sheets';
import { phrase } from '#texts';
import { Link } from '../address/link.tsx';
import { NOBODY, nameOnDevice, rememberName } from '../keeping/name-on-device.ts';
import { useSpoken, useTell } from '../language/use-tell.ts';
import { useSession } from '../people/session.ts';
import { useWork } from '../reckoning/use-work.ts';
import { cellWords } from '../self-check/screens.ts';
import { useChecks } from '../self-check/use-checks.ts';

const NameField = () => {
  const tell = useTell();
  const id = useId();
  const [name, setName] = useState(() => (nameOnDevice() === NOBODY ? '' : nameOnDevice()));
  const session = useSession();
  if (session?.kind === 'person') {
    return <Cell term={tell('edits and prints by')}>{session.name}</Cell>;
  }
  return (
    <div>
      <dt>
        <label htmlFor={id}>{tell('edits and prints by')}</label>
      </dt>
      <dd>
        <input
          id={id}
          className="by"
          value={name}
          maxLength={80}
          placeholder={tell('your name or post')}
          autoComplete="off"
          onChange={({ target }) => {
            setName(target.value);
            rememberName(target.value);
          }}
        />
      </dd>
    </div>
  );
};

const Cell = ({ term, children }: { readonly term: string; readonly children: ReactNode }) => (
  <div>
    <dt>{term}</dt>
    <dd>{children}</dd>
  </div>
);

type TitleBlockProps = { readonly drawing: string; readonly scale: string };

/** The clock of the demo stands still, and says so. */
const shownWords = (nowMs: number, isDemo: boolean, house: House): string => {
  const moment = sayMoment(new Date(nowMs).toISOString(), house);
  return isDemo
    ? phrase(house, 'demo clock, {moment}', { moment })
    : phrase(house, 'from this server, {moment}', { moment });
};

export const TitleBlock = ({ drawing, scale }: TitleBlockProps) => {
  const tell = useTell();
  const { language } = useSpoken();
  const { house, state, kept, nowMs } = useWork();
  const checks = useChecks();
  const recorded =
    state === null ? tell('nothing recorded') : `${sayMoment(state.at, house)}, ${state.by}`;
  return (
    <footer className="foot-line">
      <p className="standing-caution">
        {tell(
          'Advises and records; it commands nothing and certifies nothing. Local codes, ' +
            'the rules of the house and licensed or competent persons come first. Not for ' +
            'flying people.',
        )}
        {language === 'en' ? null : (
          <>
            {' '}
            {tell('Not all of it is in this language yet: what is not stays English.')}{' '}
            {tell('Its trade words are from memory: no practitioner has read them yet.')}
          </>
        )}
      </p>
      <dl className="title-block" aria-label={tell('Title block')}>
        <Cell term={tell('drawing')}>{drawing}</Cell>
        <Cell term={tell('scale')}>{scale}</Cell>
        <Cell term={tell('units')}>{unitWords(house.units)}</Cell>
        <Cell term={tell('recorded')}>{recorded}</Cell>
        <Cell term={tell('shown')}>{shownWords(nowMs, house.demo, house)}</Cell>
        <Cell term={tell('revision')}>{kept.show.server.revision}</Cell>
        <Cell term={tell('self-check')}>
          <Link to={{ kind: 'selfCheck' }}>{cellWords(checks, house)}</Link>
        </Cell>
        <NameField />
      </dl>
    </footer>
  );
};
