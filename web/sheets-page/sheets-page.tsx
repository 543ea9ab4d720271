/** What prints, previewed: the list of sheets, the chosen one, and its ways to paper. */

import { useMemo, useState } from 'react';
import { type SheetContext, sheetIds, sheetOf } from '#sheets';
import type { HouseNow } from '#state';
import { useCall } from '../call/use-call.ts';
import { useNames } from '../call-desk/use-names.ts';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { nameOnDevice } from '../keeping/name-on-device.ts';
import { useTell } from '../language/use-tell.ts';
import { ordersOf } from '../order/order-source.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';
import { useChecks } from '../self-check/use-checks.ts';
import { CodeQuestion } from './code-question.tsx';
import { PrintLinks } from './print-links.tsx';
import { SheetList } from './sheet-list.tsx';
import { SheetPreview } from './sheet-preview.tsx';

/** The call of this very show, while it runs; a sheet of another says nothing of this one. */
const useCallOf = ({ house, show }: Work): HouseNow | null => {
  const { now } = useCall();
  const call = now?.call ?? null;
  return call !== null && call.house === house.id && call.show === show.id ? now : null;
};

/** The clock of the preview: when this screen was opened, as a print of that moment would say. */
const useContextOf = (work: Work): SheetContext => {
  const tell = useTell();
  const [printedAt] = useState(() => new Date().toISOString());
  const { house, show, state, assessment, findings, kept } = work;
  const revision = tell('house {revision}, show {revision2}', {
    revision: kept.house.server.revision,
    revision2: kept.show.server.revision,
  });
  const { browser, server } = useChecks();
  const now = useCallOf(work);
  const people = useNames();
  // The server makes the prints; before it has answered nothing is known of it.
  const { installation } = browser;
  // Kept while documents are the same: an order that was found for one sheet is found for all.
  const orders = useMemo(() => ordersOf({ house, show, state }), [house, show, state]);
  return useMemo(
    () => ({
      house,
      show,
      state,
      assessment,
      findings,
      orders,
      now,
      people,
      stamp: { revision, printedAt, printedBy: nameOnDevice() },
      selfCheck: server ?? { installation, state: { is: 'notRun' } },
    }),
    [
      house,
      show,
      state,
      assessment,
      findings,
      orders,
      now,
      people,
      revision,
      printedAt,
      installation,
      server,
    ],
  );
};

export const SheetsPage = ({ id }: { readonly id: string | null }) => {
  const tell = useTell();
  const context = useContextOf(useWork());
  const chosen = id ?? sheetIds(context)[0] ?? '';
  const sheet = useMemo(() => sheetOf(context, chosen), [context, chosen]);
  return (
    <>
      <div className="page-head">
        <h1>{tell('Sheets')}</h1>
        <p className="quiet">
          {tell(
            'What a crew checks a hang by, and what it works by: strike, loading and ' +
              'unloading sheets are each of an order that was found and judged, or say why ' +
              'there is none.',
          )}
        </p>
      </div>
      <div className="sheets-page">
        <SheetList context={context} chosen={chosen} />
        <div className="leaf-chosen">
          {sheet === undefined ? (
            <Notice
              degree="caution"
              title={tell('there is no sheet {chosen} in this show', { chosen })}
            >
              <p>
                {tell('The address asks for it, and no other is shown in its place. Choose one.')}
              </p>
            </Notice>
          ) : (
            <>
              <PrintLinks sheet={sheet} />
              <CodeQuestion key={chosen} context={context} id={chosen} />
              <SheetPreview sheet={sheet} />
            </>
          )}
        </div>
      </div>
      <TitleBlock
        drawing={sheet === undefined ? tell('Sheets') : sheet.title}
        scale="as on the sheet"
      />
    </>
  );
};
