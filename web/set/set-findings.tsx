/** What the rules say of this set: the gravest first, each in the marks of its degree. */
import { useState } from 'react';
import type { Finding } from '#findings';
import { sayFinding } from '#sheets';
import { told } from '#texts';
import { Notice } from '../frame/notice.tsx';
import { useTell } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';
import { useWork } from '../reckoning/use-work.ts';
import { WorkingView } from './working-view.tsx';

const DEGREES = { stop: 'danger', caution: 'caution', note: 'note' } as const;
const ORDER = ['stop', 'caution', 'note'] as const;

export const FindingNotice = ({ finding }: { readonly finding: Finding }) => {
  const tell = useTell();
  const { house } = useWork();
  const [isOpen, setOpen] = useState(false);
  const { title, sentence } = sayFinding(finding, house);
  const { working, limitSource, code } = finding;
  return (
    <Notice degree={DEGREES[finding.level]} title={title}>
      <p>
        {sentence} <span className="code">{code}</span>
      </p>
      <p className="quiet">
        {told(house, limitSource)}
        {working === null ? null : (
          <>
            {'. '}
            <button
              type="button"
              className="as-words"
              aria-expanded={isOpen}
              onClick={() => setOpen(!isOpen)}
            >
              {isOpen ? tell('Hide the working') : tell('Working')}
            </button>
          </>
        )}
      </p>
      {isOpen && working !== null ? <WorkingView working={working} /> : null}
    </Notice>
  );
};

const keyOf = ({ code, at }: Finding, index: number): string =>
  `${code} ${at.item ?? ''} ${at.heightM ?? ''} ${index}`;

type FindingsProps = {
  readonly each: SetReckoning;
  /** Danger stands above the drawings, where it cannot be scrolled past. */
  readonly degree: 'stop' | 'others';
};

export const SetFindings = ({ each, degree }: FindingsProps) => {
  const tell = useTell();
  const shown = each.findings
    .filter(({ level }) => (level === 'stop') === (degree === 'stop'))
    .toSorted((one, other) => ORDER.indexOf(one.level) - ORDER.indexOf(other.level));
  if (degree === 'stop') {
    return shown.map((finding, index) => (
      <FindingNotice key={keyOf(finding, index)} finding={finding} />
    ));
  }
  return (
    <section className="findings-list" aria-labelledby="findings-head">
      <h2 id="findings-head">{tell('Look first')}</h2>
      {shown.length === 0 ? (
        <p className="quiet">
          {tell(
            'No rule that this program knows speaks to this set. That is no proof: see what is ' +
              'due by hand.',
          )}
        </p>
      ) : (
        shown.map((finding, index) => (
          <FindingNotice key={keyOf(finding, index)} finding={finding} />
        ))
      )}
    </section>
  );
};
