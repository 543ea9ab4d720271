/** What stands against the next step: as this device sees it, and as the server refused it. */
import type { CallDocuments, LeaveJudged } from '#call';
import { sayFinding } from '#sheets';
import { phrase } from '#texts';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';
import { refusalWords } from '../live/refusal-words.ts';
import type { Refused } from './use-say.ts';

type AgainstProps = {
  readonly judged: LeaveJudged | null;
  readonly documents: CallDocuments;
};

/** Before it is asked, so that nobody asks in vain; the server has the last word all the same. */
export const Against = ({ judged, documents }: AgainstProps) => {
  const tell = useTell();
  const { house } = documents;
  if (judged === null || judged.findings.length === 0) return null;
  return (
    <div className="against">
      <Glyph name="caution" />
      <div>
        <p>
          <b>{tell('No leave as it stands now:')}</b>
        </p>
        <ul>
          {judged.findings.map(({ rule, says, finding }) => (
            <li key={rule}>
              {finding === null
                ? tell('{rule}: {words}', { rule, words: phrase(house, says) })
                : tell('{rule}: {words}', { rule, words: sayFinding(finding, house).sentence })}
            </li>
          ))}
        </ul>
      </div>
    </div>
  );
};

/** Rules that stand against it and that two people with a reason may set aside; else none. */
export const coverableOf = (judged: LeaveJudged | null): readonly string[] =>
  judged === null || judged.findings.some(({ isHold }) => isHold)
    ? []
    : [...new Set(judged.findings.map(({ rule }) => rule))];

export const RefusedWords = ({ refused }: { readonly refused: Refused }) => {
  const tell = useTell();
  const { code, words } = refused;
  return (
    <div className="refused" role="alert">
      <Glyph name="caution" />
      <p>
        <b>{tell('Refused, {code}', { code })}</b> {tell(refusalWords(code, words))}
      </p>
    </div>
  );
};
