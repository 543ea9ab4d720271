/** An example house with its show and its state, read as a user's documents are, and assessed. */
import { readFileSync } from 'node:fs';
import { type Assessment, assess } from '#assessment';
import { readHouse, readShow, readState } from '#documents';
import type { House } from '#house';
import type { Show } from '#show';
import type { HouseState } from '#state';

export type Example = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState;
  readonly assessment: Assessment;
};

const SHOWS = { kestlemere: 'clockmaker', skelderwick: 'regatta' } as const;

const textOf = (folder: string, file: string): string =>
  readFileSync(new URL(`./${folder}/${file}`, import.meta.url), 'utf8');

const mustRead = <T>(
  answer:
    | { readonly ok: true; readonly value: T }
    | { readonly ok: false; readonly error: unknown },
): T => {
  if (answer.ok) return answer.value;
  throw new Error(`an example does not read: ${JSON.stringify(answer.error)}`);
};

export const openExample = (name: keyof typeof SHOWS): Example => {
  const { house } = mustRead(readHouse(textOf(name, 'house.json')));
  const { show } = mustRead(readShow(textOf(name, `${SHOWS[name]}.show.json`), house));
  const { state } = mustRead(readState(textOf(name, 'state.json'), house, show));
  return { house, show, state, assessment: assess(house, show, state) };
};
