/**
 * Practice on tonight's hang with a simulated crew. All of it stands in the hatched frame with its
 * word; it has a record of its own in this page, and nothing of it is sent.
 */
import { useState } from 'react';
import { TitleBlock } from '../frame/title-block.tsx';
import { useTell } from '../language/use-tell.ts';
import { PlannedFrame } from '../order/planned-frame.tsx';
import { DrillSetup } from './drill-setup.tsx';
import { Practice } from './practice.tsx';
import type { Begun } from './use-drill.ts';
import './drill.css';

export const DrillPage = () => {
  const tell = useTell();
  const [begun, setBegun] = useState<Begun | null>(null);
  return (
    <>
      <div className="page-head">
        <h1>{tell('Drill')}</h1>
        <p className="quiet">
          {tell(
            'The work of tonight with a crew that is simulated, to learn on. It is no leave for ' +
              'anything, and no sign-off: people who teach decide that.',
          )}
        </p>
      </div>
      <PlannedFrame
        word="DRILL"
        title={begun === null ? tell('What is practised') : tell('A set of tonight, in practice')}
        note={tell(
          'Nothing here is real or recorded, and no other post sees it. Whoever sees a real ' +
            'danger shouts.',
        )}
      >
        {begun === null ? (
          <DrillSetup onBegin={setBegun} />
        ) : (
          <Practice begun={begun} onAnother={() => setBegun(null)} />
        )}
      </PlannedFrame>
      <TitleBlock drawing={tell('Drill')} scale="not to scale" />
    </>
  );
};
