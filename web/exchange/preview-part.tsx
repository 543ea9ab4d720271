/** What every row would become, every cell that is refused, and the one edit that takes it. */
import { useMemo, useState } from 'react';
import {
  type Mapping,
  openQuestions,
  type Preview,
  previewMapping,
  type Sheet,
  startsLikeFormula,
} from '#exchange';
import type { Refusal } from '#outcome';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { readShowOnce } from '../reckoning/read-once.ts';
import { useEditing, useWork } from '../reckoning/use-work.ts';
import { formulaLike } from './mapping-choices.ts';
import { shownText } from './shown-text.ts';

type PartProps = {
  readonly file: string;
  readonly sheet: Sheet;
  readonly mapping: Mapping;
  /** It is of the mapping before the last change, and the next one is on its way. */
  readonly isLate: boolean;
};

type Judged = Preview & {
  /** Something must be said before any row is looked at. */
  readonly isAsked: boolean;
  /** The table is understood, and the show that would come of it is not. */
  readonly ofShow: readonly Refusal[];
};

const useJudged = (sheet: Sheet, mapping: Mapping): Judged => {
  const { house, kept } = useWork();
  const show = kept.show.document;
  return useMemo(() => {
    const isAsked = openQuestions(mapping, sheet).length > 0;
    const preview = { ...previewMapping({ mapping, sheet, show, house }), isAsked };
    if (preview.refusals.length > 0 || preview.changes.length === 0) {
      return { ...preview, ofShow: [] };
    }
    const read = readShowOnce(preview.document, house);
    return { ...preview, ofShow: read.ok ? [] : read.error };
  }, [sheet, mapping, show, house]);
};

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

const outcomeWords = ({ changes, refusals, ofShow, isAsked }: Judged): string => {
  const refused = refusals.length + ofShow.length;
  if (isAsked) return `${counted(refused, 'question')} open: answer above, and it is worked out.`;
  const said = `${counted(changes.length, 'change')} understood`;
  if (refused > 0) {
    const what = `${counted(refused, 'thing')} refused`;
    return `${said}, ${what}: nothing can be taken until it is mended.`;
  }
  return changes.length === 0
    ? 'The table says nothing that is not in the show already.'
    : `${said}, nothing refused.`;
};

export const PreviewPart = ({ file, sheet, mapping, isLate }: PartProps) => {
  const editing = useEditing();
  const judged = useJudged(sheet, mapping);
  const [taken, setTaken] = useState('');
  const { changes, refusals, ofShow, document } = judged;
  const leftOut = mapping.columns.filter(({ to, heading }) => to === null && heading !== '');
  const like = formulaLike(mapping, sheet, startsLikeFormula);
  const isReady = changes.length > 0 && refusals.length === 0 && ofShow.length === 0 && !isLate;
  const take = (): void => {
    const count = counted(changes.length, 'change');
    const what = `brought in ${file}: ${count}`;
    const refused = editing.change({ write: () => document, what });
    if (refused.length === 0) setTaken(`${count} taken as one edit. Undo takes them back.`);
  };
  return (
    <section aria-labelledby="preview-part" aria-busy={isLate}>
      <h3 id="preview-part" className="step-head">
        What would change
      </h3>
      <p role="status">{taken === '' || changes.length > 0 ? outcomeWords(judged) : taken}</p>
      {leftOut.length === 0 ? null : (
        <p>Columns left out: {leftOut.map(({ heading }) => shownText(heading)).join(', ')}.</p>
      )}
      {like === 0 ? null : (
        <Notice degree="caution" title={`${counted(like, 'cell')} written like a formula`}>
          <p>They are taken as the words that they are. Nothing is worked out.</p>
        </Notice>
      )}
      <RefusedCells refusals={[...refusals, ...ofShow]} isAsked={judged.isAsked} />
      <ChangesTable changes={changes} />
      <p className="buttons">
        <button type="button" disabled={!isReady} onClick={take}>
          {changes.length === 0 ? 'Nothing to take' : `Take ${counted(changes.length, 'change')}`}
        </button>
        {taken === '' ? null : <Link to={{ kind: 'hangList' }}>Open the hang list</Link>}
      </p>
    </section>
  );
};

type CellsProps = { readonly refusals: readonly Refusal[]; readonly isAsked: boolean };

const RefusedCells = ({ refusals, isAsked }: CellsProps) => {
  if (refusals.length === 0) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keys
    <section className="wide" aria-label={isAsked ? 'Questions' : 'Refused cells'} tabIndex={0}>
      <table className="plain preview-table">
        <caption className="caution-word">{isAsked ? 'Asked first' : 'Refused'}</caption>
        <thead>
          <tr>
            <th scope="col">Where</th>
            <th scope="col">Found</th>
            <th scope="col">Accepted</th>
            <th scope="col">Code</th>
          </tr>
        </thead>
        <tbody>
          {refusals.map(({ code, path, found, accepted }) => (
            <tr key={`${code} ${path} ${found}`}>
              <th scope="row">{shownText(path)}</th>
              <td>{shownText(found, 120)}</td>
              <td>{accepted}</td>
              <td className="code">{code}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

/** More rows than a person reads through would only make the page slow; all are taken. */
const SHOWN_MAX = 300;

const ChangesTable = ({ changes }: Pick<Judged, 'changes'>) => {
  if (changes.length === 0) return null;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keys */}
      <section className="wide" aria-label="Changes" tabIndex={0}>
        <table className="plain preview-table">
          <thead>
            <tr>
              <th scope="col">Cell</th>
              <th scope="col">What</th>
              <th scope="col">Before</th>
              <th scope="col">After</th>
            </tr>
          </thead>
          <tbody>
            {changes.slice(0, SHOWN_MAX).map(({ where, about, before, after }) => (
              <tr key={`${where} ${about}`}>
                <td className="code">{shownText(where)}</td>
                <th scope="row">{shownText(about, 80)}</th>
                <td>
                  {before === '' ? <span className="quiet">nothing</span> : shownText(before)}
                </td>
                <td>{after === '' ? <span className="quiet">nothing</span> : shownText(after)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {changes.length > SHOWN_MAX ? (
        <p>{changes.length - SHOWN_MAX} more are not shown, and are taken with these.</p>
      ) : null}
    </>
  );
};
