import { Notice } from '../frame/notice.tsx';
import { useTell, useTellCount } from '../language/use-tell.ts';
import type { Outcome } from './use-sheet-acts.ts';

/** A page of faults is read from its top; past this many the text is the wrong one altogether. */
const FAULTS_SHOWN = 200;

/** What the last act on several cells came to; a refusal names every cell. */
export const SheetOutcome = ({ outcome }: { readonly outcome: Outcome | null }) => {
  const tell = useTell();
  const tellCount = useTellCount();
  if (outcome?.kind !== 'refused') {
    return (
      <p className="quiet sheet-done" role="status">
        {outcome?.words ?? ''}
      </p>
    );
  }
  const { title, faults } = outcome;
  return (
    <Notice degree="caution" title={title} isNews>
      <p>
        {tellCount(faults.length, [
          'One place was not understood:',
          '{count} places were not understood:',
        ])}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: its scrolling takes keys */}
      <ul className="refusals cell-faults" tabIndex={0} aria-label={tell('Places not understood')}>
        {faults.slice(0, FAULTS_SHOWN).map(({ where, found, accepted }) => (
          <li key={`${where} ${found} ${accepted}`}>
            <b>{where}</b>
            {tell(': found {found}. Accepted: {accepted}.', { found, accepted })}
          </li>
        ))}
      </ul>
      {faults.length > FAULTS_SHOWN ? (
        <p>{tell('And {count} more.', { count: faults.length - FAULTS_SHOWN })}</p>
      ) : null}
    </Notice>
  );
};
