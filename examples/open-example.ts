/** An example house with its show and its state, read as a user's documents are, and assessed. */
import { readFileSync } from 'node:fs';
import { type Assessment, assess } from '#assessment';
import { readHouse, readShow, readState } from '#documents';
import type { House } from '#house';
import { CALCULATIONS, type SelfCheckRecord } from '#selfcheck';
import type { Show } from '#show';
import type { HouseState } from '#state';

export type Example = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState;
  readonly assessment: Assessment;
  readonly selfCheck: SelfCheckRecord;
};

/** A self-check of an invented copy of the program: all within tolerance. */
const SELF_CHECK: SelfCheckRecord = {
  installation: { version: '0.0.0', build: '0123456789ab', platform: 'an invented machine' },
  state: {
    is: 'done',
    at: '2026-11-25T18:50:00+01:00',
    report: {
      calculations: CALCULATIONS.map((calculation) => ({
        calculation,
        cases: 2,
        comparisons: 9,
        worst: { case: 'VAL-DEMO-01', error: 0.0041, tolerance: 0.005, unit: 'kg' },
        failed: 0,
        developmentOnly: 1,
      })),
      failed: [],
    },
  },
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
  const assessment = assess(house, show, state);
  return { house, show, state, assessment, selfCheck: SELF_CHECK };
};
