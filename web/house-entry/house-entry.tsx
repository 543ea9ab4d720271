/** Entering a house: everything that its document holds, part by part. */
import { useEffect, useRef } from 'react';
import { askedOf } from '#documents';
import type { Place } from '../address/address.ts';
import { Link } from '../address/link.tsx';
import { Notice } from '../frame/notice.tsx';
import { TitleBlock } from '../frame/title-block.tsx';
import { useTell } from '../language/use-tell.ts';
import { useWork } from '../reckoning/use-work.ts';
import { countsOf, countWords } from './asked-words.ts';
import { DeskContext, say } from './desk.ts';
import { EntryList } from './entry-list.tsx';
import { EntryOverview } from './entry-overview.tsx';
import { fieldId, keysOf } from './entry-path.ts';
import { FieldView } from './field-view.tsx';
import { documentForm, fieldAt } from './form.ts';
import { useHouseDesk } from './house-desk.ts';
import { PARTS, type Part } from './parts.ts';
import { SetsPart } from './sets-part.tsx';

type EntryProps = { readonly place: Extract<Place, { readonly kind: 'house' }> };

export const HouseEntry = ({ place }: EntryProps) => {
  const tell = useTell();
  const desk = useHouseDesk();
  const { inside, field } = place;
  const part = PARTS.find(({ id }) => id === inside);
  return (
    <DeskContext value={desk}>
      <div className="house-entry">
        {inside === undefined ? (
          <EntryOverview />
        ) : part === undefined ? (
          <Notice degree="caution" title={tell('there is no such part of the form')}>
            <p>
              {tell('Found {found}. Accepted: {accepted}.', {
                found: inside,
                accepted: PARTS.map(({ id }) => id).join(', '),
              })}
            </p>
          </Notice>
        ) : (
          <PartForm part={part} field={field ?? ''} />
        )}
      </div>
      <TitleBlock
        drawing={
          part === undefined
            ? tell('House, entered')
            : tell('House, {part}', { part: say(desk, part.title) })
        }
        scale={tell('no drawing')}
      />
    </DeskContext>
  );
};

/** The field itself; where it has no row of its own, what it stands in. */
const elementOf = (keys: readonly string[]): HTMLElement | null =>
  keys.length === 0
    ? null
    : (document.getElementById(fieldId(keys)) ?? elementOf(keys.slice(0, -1)));

/** Goes to the field that the address names, and opens what it stands in. */
const useLed = (field: string): void => {
  const led = useRef('');
  useEffect(() => {
    if (field === '' || led.current === field) return;
    led.current = field;
    const keys = keysOf(field);
    const isSet = keys[0] === 'lineSets' && keys.length === 2;
    const element = isSet ? document.getElementById('set-opened') : elementOf(keys);
    element?.focus();
    element?.scrollIntoView({ block: 'center' });
  }, [field]);
};

const PartForm = ({ part, field }: { readonly part: Part; readonly field: string }) => {
  const desk = useHouseDesk();
  const { house, show } = useWork();
  useLed(field);
  const asked = keysOf(field);
  const form = documentForm('house');
  return (
    <section aria-labelledby="part-head" className="entry-part">
      <PartWays part={part} />
      <h2 id="part-head">{say(desk, part.title)}</h2>
      <p className="quiet">{say(desk, part.about)}</p>
      <p className="entry-count entry-counted">
        {countWords(part, countsOf(askedOf(house, show)), desk.root, house)}
      </p>
      {part.lists.map((list) =>
        list.at === 'lineSets' ? (
          <SetsPart key={list.at} list={list} asked={asked} />
        ) : (
          <EntryList key={list.at} list={list} asked={asked} />
        ),
      )}
      {part.groups.map(({ title, paths }) => (
        <section key={title} className="entry-group" aria-label={say(desk, title)}>
          {part.groups.length > 1 ? <h3>{say(desk, title)}</h3> : null}
          {paths.map((path) => (
            <FieldView key={path} field={fieldAt(form, path)} path={path.split('.')} place={path} />
          ))}
        </section>
      ))}
      <PartWays part={part} />
    </section>
  );
};

/** Part before and part after, in the order in which a house is entered. */
const PartWays = ({ part }: { readonly part: Part }) => {
  const tell = useTell();
  const desk = useHouseDesk();
  const index = PARTS.indexOf(part);
  const [before, next] = [PARTS[index - 1], PARTS[index + 1]];
  const way = (to: Part, words: string) => (
    <Link to={{ kind: 'house', part: 'enter', at: null, inside: to.id }}>{words}</Link>
  );
  return (
    <p className="entry-ways">
      <Link to={{ kind: 'house', part: 'enter', at: null }}>{tell('All parts')}</Link>
      {before && way(before, tell('before: {part}', { part: say(desk, before.title) }))}
      {next && way(next, tell('next: {part}', { part: say(desk, next.title) }))}
    </p>
  );
};
