/** What every row would become, every cell that is refused, and the one edit that takes it. */
import { useMemo, useState } from 'react';
import {
  aboutWords,
  type Mapping,
  openQuestions,
  type Preview,
  previewMapping,
  type Sheet,
  startsLikeFormula,
} from '#exchange';
import type { Refusal } from '#outcome';
import { phrase, phraseCount, told, type Voice } from '#texts';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { useTell, useTellCount, useVoice } from '../language/use-tell.ts';
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

const outcomeWords = ({ changes, refusals, ofShow, isAsked }: Judged, voice: Voice): string => {
  const refused = refusals.length + ofShow.length;
  if (isAsked) {
    return phraseCount(voice, refused, [
      '{count} question open: answer above, and it is worked out.',
      '{count} questions open: answer above, and it is worked out.',
    ]);
  }
  if (refused > 0) {
    const understood = phraseCount(voice, changes.length, [
      '{count} change understood',
      '{count} changes understood',
    ]);
    return phraseCount(
      voice,
      refused,
      [
        '{understood}, {count} thing refused: nothing can be taken until it is mended.',
        '{understood}, {count} things refused: nothing can be taken until it is mended.',
      ],
      { understood },
    );
  }
  return changes.length === 0
    ? phrase(voice, 'The table says nothing that is not in the show already.')
    : phraseCount(voice, changes.length, [
        '{count} change understood, nothing refused.',
        '{count} changes understood, nothing refused.',
      ]);
};

export const PreviewPart = ({ file, sheet, mapping, isLate }: PartProps) => {
  const tell = useTell();
  const voice = useVoice();
  const tellCount = useTellCount();
  const editing = useEditing();
  const judged = useJudged(sheet, mapping);
  const [taken, setTaken] = useState('');
  const { changes, refusals, ofShow, document } = judged;
  const like = formulaLike(mapping, sheet, startsLikeFormula);
  const isReady = changes.length > 0 && refusals.length === 0 && ofShow.length === 0 && !isLate;
  const take = (): void => {
    const count = changes.length;
    const what = `brought in ${file}: ${count} change${count === 1 ? '' : 's'}`;
    const refused = editing.change({ write: () => document, what });
    if (refused.length > 0) return;
    setTaken(
      tellCount(count, [
        '{count} change taken as one edit. Undo takes them back.',
        '{count} changes taken as one edit. Undo takes them back.',
      ]),
    );
  };
  return (
    <section aria-labelledby="preview-part" aria-busy={isLate}>
      <h3 id="preview-part" className="step-head">
        {tell('What would change')}
      </h3>
      <p role="status">
        {taken === '' || changes.length > 0 ? outcomeWords(judged, voice) : taken}
      </p>
      <LeftOutColumns mapping={mapping} />
      {like === 0 ? null : (
        <Notice
          degree="caution"
          title={tellCount(like, [
            '{count} cell written like a formula',
            '{count} cells written like a formula',
          ])}
        >
          <p>{tell('They are taken as the words that they are. Nothing is worked out.')}</p>
        </Notice>
      )}
      <RefusedCells refusals={[...refusals, ...ofShow]} isAsked={judged.isAsked} />
      <ChangesTable changes={changes} />
      <p className="buttons">
        <button type="button" disabled={!isReady} onClick={take}>
          {changes.length === 0
            ? tell('Nothing to take')
            : tellCount(changes.length, ['Take {count} change', 'Take {count} changes'])}
        </button>
        {taken === '' ? null : <Link to={{ kind: 'hangList' }}>{tell('Open the hang list')}</Link>}
      </p>
    </section>
  );
};

const LeftOutColumns = ({ mapping }: Pick<PartProps, 'mapping'>) => {
  const tell = useTell();
  const leftOut = mapping.columns.filter(({ to, heading }) => to === null && heading !== '');
  if (leftOut.length === 0) return null;
  const columns = leftOut.map(({ heading }) => shownText(heading)).join(', ');
  return <p>{tell('Columns left out: {columns}.', { columns })}</p>;
};

type CellsProps = { readonly refusals: readonly Refusal[]; readonly isAsked: boolean };

const RefusedCells = ({ refusals, isAsked }: CellsProps) => {
  const tell = useTell();
  const voice = useVoice();
  if (refusals.length === 0) return null;
  const label = isAsked ? tell('Questions') : tell('Refused cells');
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keys
    <section className="wide" aria-label={label} tabIndex={0}>
      <table className="plain preview-table">
        <caption className="caution-word">
          {isAsked ? tell('Asked first') : tell('Refused')}
        </caption>
        <thead>
          <tr>
            <th scope="col">{tell('Where')}</th>
            <th scope="col">{tell('Found')}</th>
            <th scope="col">{tell('Accepted')}</th>
            <th scope="col">{tell('Code')}</th>
          </tr>
        </thead>
        <tbody>
          {refusals.map(({ code, path, found, accepted }) => (
            <tr key={`${code} ${path} ${found}`}>
              <th scope="row">{shownText(path)}</th>
              <td>{shownText(told(voice, found), 120)}</td>
              <td>{told(voice, accepted)}</td>
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
  const tell = useTell();
  const voice = useVoice();
  if (changes.length === 0) return null;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keys */}
      <section className="wide" aria-label={tell('Changes')} tabIndex={0}>
        <table className="plain preview-table">
          <thead>
            <tr>
              <th scope="col">{tell('Cell')}</th>
              <th scope="col">{tell('What')}</th>
              <th scope="col">{tell('Before')}</th>
              <th scope="col">{tell('After')}</th>
            </tr>
          </thead>
          <tbody>
            {changes.slice(0, SHOWN_MAX).map(({ where, about, before, after }) => (
              <tr key={`${where} ${about}`}>
                <td className="code">{shownText(where)}</td>
                <th scope="row">{shownText(aboutWords(voice, about), 80)}</th>
                <td>
                  {before === '' ? (
                    <span className="quiet">{tell('nothing')}</span>
                  ) : (
                    shownText(before)
                  )}
                </td>
                <td>
                  {after === '' ? (
                    <span className="quiet">{tell('nothing')}</span>
                  ) : (
                    shownText(after)
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {changes.length > SHOWN_MAX ? (
        <p>
          {tell('{count} more are not shown, and are taken with these.', {
            count: changes.length - SHOWN_MAX,
          })}
        </p>
      ) : null}
    </>
  );
};
