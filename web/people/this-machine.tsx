/** Whether the machine of the server itself needs a sign-in. */
import { useTell } from '../language/use-tell.ts';
import { askPeople } from './ask-people.ts';
import { Part } from './field.tsx';
import { askSession, type Session } from './session.ts';
import { useAct } from './use-act.tsx';

export const ThisMachine = ({ session }: { readonly session: Session }) => {
  const tell = useTell();
  const { act, isBusy, said } = useAct();
  const isMine = session.isMine === true;
  const change = () =>
    act(async () => {
      const answer = await askPeople('PUT', '/api/people/this-machine', { isMine: !isMine });
      if (answer.ok) await askSession();
      return answer;
    });
  return (
    <Part title={tell('The machine of the server')}>
      <p>
        {isMine
          ? tell(
              'It is kept open: whoever sits at it acts as an owner, without signing in. Nothing ' +
                'is signed off there without a name.',
            )
          : tell('It needs a sign-in like every other device.')}
      </p>
      <p className="buttons">
        <button type="button" disabled={isBusy} onClick={() => void change()}>
          {isMine
            ? tell('Ask for a sign-in there too')
            : tell('Keep it open: this machine is mine')}
        </button>
      </p>
      {said}
    </Part>
  );
};
