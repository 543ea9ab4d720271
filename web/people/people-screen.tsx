/** The screens of people stand by themselves: who is not let in yet must see them, too. */
import { unreachable } from '#outcome';
import { message } from '#texts';
import type { PeoplePart, Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { Frame } from '../frame/frame.tsx';
import { LightChoice } from '../frame/light-choice.tsx';
import { LanguageChoice } from '../language/language-choice.tsx';
import { useTell } from '../language/use-tell.ts';
import { OwnDevice } from './own-device.tsx';
import './people.css';
import { PeopleList } from './people-list.tsx';
import { Programs } from './programs.tsx';
import { type Session, useSession } from './session.ts';
import { Join, MakeOwner, SignIn } from './ways-in.tsx';

const TITLES: Readonly<Record<PeoplePart, string>> = {
  list: message('People'),
  signIn: message('Sign in'),
  owner: message('The owner'),
  join: message('Invitation'),
  devices: message('This device'),
  programs: message('Programs'),
};

/** Where who is signed in may go; the rest is reached by a link that one is given. */
const waysOf = (session: Session | null): readonly PeoplePart[] => {
  if (session === null || session.kind === 'nobody') return ['signIn'];
  const isOwner = session.kind === 'thisMachine' || session.role === 'own';
  return [
    'list',
    ...(session.kind === 'person' ? (['devices'] as const) : (['signIn'] as const)),
    ...(isOwner ? (['programs'] as const) : []),
  ];
};

const PartOf = ({ part }: { readonly part: PeoplePart }) => {
  switch (part) {
    case 'list':
      return <PeopleList />;
    case 'signIn':
      return <SignIn />;
    case 'owner':
      return <MakeOwner />;
    case 'join':
      return <Join />;
    case 'devices':
      return <OwnDevice />;
    case 'programs':
      return <Programs />;
    default:
      return unreachable(part);
  }
};

export const PeopleScreen = ({ place }: { readonly place: Extract<Place, { kind: 'people' }> }) => {
  const tell = useTell();
  const session = useSession();
  const { part } = place;
  return (
    <Frame isDemo={false} title={tell(TITLES[part])}>
      <header className="strip">
        <nav aria-label={tell('Workspaces')}>
          {session === null || session.kind === 'nobody' ? null : (
            <Link to={{ kind: 'hangList' }}>{tell('Hang list')}</Link>
          )}
          {waysOf(session).map((each) => (
            <Link key={each} to={{ kind: 'people', part: each }} isHere={each === part}>
              {tell(TITLES[each])}
            </Link>
          ))}
        </nav>
        <div className="keeping">
          <LightChoice />
          <LanguageChoice />
        </div>
      </header>
      <main className="people">
        <h1>{tell(TITLES[part])}</h1>
        <PartOf key={part} part={part} />
      </main>
      <footer className="foot-line">
        <p className="standing-caution">
          {tell(
            'Advises and records; it commands nothing and certifies nothing. Local codes, ' +
              'the rules of the house and licensed or competent persons come first. Not for ' +
              'flying people.',
          )}
        </p>
      </footer>
    </Frame>
  );
};
