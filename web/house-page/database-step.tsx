/** Which house this is, and the one step from the demo to a house of one's own and back. */
import { useState } from 'react';
import { goToAddress } from '../address/use-address.ts';
import { Notice } from '../frame/notice.tsx';
import type { DatabaseName, Databases, NewHouse } from '../keeping/server.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell } from '../language/use-tell.ts';
import { whileDatabaseIsTaken } from '../live/database-taken.ts';
import { NewHouseForm } from './new-house-form.tsx';

type Fault = { readonly words: string } | null;

/** Takes the other database in hand; the address must not ask there for a house of this one. */
const useTake = () => {
  const keeper = useKeeper();
  const [fault, setFault] = useState<Fault>(null);
  const [isTaking, setTaking] = useState(false);
  const take = async (database: DatabaseName, house?: NewHouse): Promise<void> => {
    setTaking(true);
    setFault(null);
    try {
      await whileDatabaseIsTaken(() => keeper.takeDatabase(database, house));
      goToAddress({ place: { kind: 'house', part: 'limits', at: null }, house: null, show: null });
    } catch (thrown) {
      setFault({ words: thrown instanceof Error ? thrown.message : String(thrown) });
    } finally {
      setTaking(false);
    }
  };
  return { take, fault, isTaking };
};

const DemoInHand = ({ hasHouse, onTake, isTaking }: StepProps) => {
  const tell = useTell();
  if (hasHouse) {
    return (
      <>
        <p>
          {tell('This is the demo, an invented house. Your house is beside it, as you left it.')}
        </p>
        <p className="buttons">
          <button type="button" disabled={isTaking} onClick={() => onTake('house')}>
            {tell('Open our house')}
          </button>
        </p>
      </>
    );
  }
  return (
    <>
      <p>
        {tell(
          'This is the demo, an invented house. A house of your own begins blank, in a database ' +
            'of its own; the demo stays as it is and can be opened again.',
        )}
      </p>
      <NewHouseForm
        act={tell('Put the demo aside and start a blank house')}
        isTaking={isTaking}
        onBegin={(house) => onTake('house', house)}
      />
    </>
  );
};

type StepProps = {
  readonly hasHouse: boolean;
  readonly isTaking: boolean;
  readonly onTake: (database: DatabaseName, house?: NewHouse) => void;
};

export const DatabaseStep = ({ databases }: { readonly databases: Databases }) => {
  const tell = useTell();
  const { take, fault, isTaking } = useTake();
  const onTake: StepProps['onTake'] = (database, house) => void take(database, house);
  return (
    <section aria-label={tell('Demo or our house')} className="database-step">
      <h2>{databases.inHand === 'demo' ? tell('Demo') : tell('Our house')}</h2>
      {databases.inHand === 'demo' ? (
        <DemoInHand hasHouse={databases.hasHouse} isTaking={isTaking} onTake={onTake} />
      ) : (
        <>
          <p>
            {tell(
              'This is your own house. The demo has its own database and is never mixed with it.',
            )}
          </p>
          <p className="buttons">
            <button type="button" disabled={isTaking} onClick={() => onTake('demo')}>
              {tell('Open the demo')}
            </button>
          </p>
        </>
      )}
      {fault === null ? null : (
        <Notice degree="caution" title={tell('the other database was not opened')} isNews>
          <p>{tell('{fault} Nothing was changed.', { fault: fault.words })}</p>
        </Notice>
      )}
    </section>
  );
};
