/**
 * House and show as the text of their documents, so that a whole house or show can be put in at
 * once. What is not understood is listed and not saved; the data that stood there stays.
 */
import { useId, useState } from 'react';
import { type JsonObject, readHouse, readShow, writeDocument } from '#documents';
import type { Refusal } from '#outcome';
import { message, phrase, type Voice } from '#texts';
import { houseRefusals, type Referring } from '../editing/house-edits.ts';
import { Notice } from '../frame/notice.tsx';
import { RefusalsWithPlace } from '../frame/refusals.tsx';
import { useHouseEditing } from '../house-entry/house-desk.ts';
import type { Kept } from '../keeping/kept.ts';
import { useKeeper } from '../keeping/use-keeper.ts';
import { useTell } from '../language/use-tell.ts';
import { useWork, type Work } from '../reckoning/use-work.ts';

type Reading =
  | { readonly ok: true; readonly document: JsonObject }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

const refused = (refusals: readonly Refusal[]): Reading => ({ ok: false, refusals });

/** A house that a show or the record no longer fits would shut the screens: all are asked. */
const readHouseText = (text: string, { house, kept }: Work, referring: Referring): Reading => {
  const read = readHouse(text);
  if (!read.ok) return refused(read.error);
  const { raw } = read.value;
  const refusals = [...otherId(raw, kept.house, house), ...houseRefusals(raw, house, referring)];
  return refusals.length > 0 ? refused(refusals) : { ok: true, document: raw };
};

const readShowText = (text: string, { house, kept }: Work): Reading => {
  const read = readShow(text, house);
  if (!read.ok) return refused(read.error);
  const refusals = otherId(read.value.raw, kept.show, house);
  return refusals.length > 0 ? refused(refusals) : { ok: true, document: read.value.raw };
};

/** The server refuses it too; here it is said before anything is sent. */
const otherId = (raw: JsonObject, kept: Kept, voice: Voice): readonly Refusal[] =>
  raw['id'] === kept.document['id']
    ? []
    : [
        {
          code: 'SRV-001',
          path: 'id',
          found: JSON.stringify(raw['id']),
          accepted: phrase(voice, '{id}, as it is kept', {
            id: JSON.stringify(kept.document['id']),
          }),
        },
      ];

type TextProps = {
  readonly kept: Kept;
  readonly of: keyof typeof SAID;
  readonly read: (text: string) => Reading;
};

const ROWS = 18;

/** What is said of each text: a house and a show are named whole, for other grammars. */
const SAID = {
  house: {
    label: message('Text of the house'),
    changed: message('the house has changed since this text was taken'),
    save: message('Read and save the house'),
    back: message('Put the text of the house back'),
    refused: message('the text of the house was not understood'),
  },
  show: {
    label: message('Text of the show'),
    changed: message('the show has changed since this text was taken'),
    save: message('Read and save the show'),
    back: message('Put the text of the show back'),
    refused: message('the text of the show was not understood'),
  },
} as const;

/** The text as it is being typed: what it was taken from, and what was found in it. */
const useDraft = ({ kept, read }: TextProps) => {
  const keeper = useKeeper();
  const [draft, setDraft] = useState<{ text: string; from: JsonObject } | null>(null);
  const [refusals, setRefusals] = useState<readonly Refusal[]>([]);
  const [isSaved, setSaved] = useState(false);
  const text = draft?.text ?? writeDocument(kept.document);
  const type = (typed: string): void => {
    setDraft({ text: typed, from: draft?.from ?? kept.document });
    setSaved(false);
  };
  const putBack = (): void => {
    setDraft(null);
    setRefusals([]);
    setSaved(false);
  };
  const save = (): void => {
    const reading = read(text);
    setSaved(reading.ok);
    setRefusals(reading.ok ? [] : reading.refusals);
    if (!reading.ok) return;
    keeper.edit(kept.id, reading.document, `text of the ${kept.kind}`);
    setDraft(null);
  };
  const isTyped = draft !== null;
  const isOlder = isTyped && draft.from !== kept.document;
  return { text, refusals, isSaved, isTyped, isOlder, type, putBack, save };
};

const DocumentText = (props: TextProps) => {
  const tell = useTell();
  const said = SAID[props.of];
  const id = useId();
  const { text, refusals, isSaved, isTyped, isOlder, type, putBack, save } = useDraft(props);
  return (
    <div className="document-text">
      <label htmlFor={id}>{tell(said.label)}</label>
      <textarea
        id={id}
        rows={ROWS}
        value={text}
        spellCheck={false}
        autoComplete="off"
        aria-invalid={refusals.length > 0}
        onChange={({ target }) => type(target.value)}
      />
      {isOlder ? (
        <Notice degree="caution" title={tell(said.changed)} isNews>
          <p>
            {tell('Saving it would undo that change. Copy what you need and put the text back.')}
          </p>
        </Notice>
      ) : null}
      <p className="buttons">
        <button type="button" disabled={!isTyped || isOlder} onClick={save}>
          {tell(said.save)}
        </button>
        <button type="button" disabled={!isTyped} onClick={putBack}>
          {tell(said.back)}
        </button>
        <span role="status">
          {isSaved ? tell('Read without a refusal; undo brings it back.') : ''}
        </span>
      </p>
      {refusals.length === 0 ? null : (
        <Notice degree="caution" title={tell(said.refused)} isNews>
          <p>{tell('Nothing was saved. What must be mended:')}</p>
          <RefusalsWithPlace refusals={refusals} />
        </Notice>
      )}
    </div>
  );
};

export const DocumentTexts = () => {
  const tell = useTell();
  const work = useWork();
  const { referring } = useHouseEditing();
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{tell('Documents as text')}</h2>
      <p className="quiet">
        {tell(
          'Limits and masses go in as this house knows them, with their basis and source. A ' +
            'wrong limit is believed by every check: let a second competent person read it.',
        )}
      </p>
      <details>
        <summary>{tell('House and show as text')}</summary>
        <DocumentText
          kept={work.kept.house}
          of="house"
          read={(text) => readHouseText(text, work, referring)}
        />
        <DocumentText kept={work.kept.show} of="show" read={(text) => readShowText(text, work)} />
      </details>
    </section>
  );
};
