/** The registers of a house: what else holds a set, and which are out of use and why. */
import type { House } from '#house';
import type { ServiceState } from '#state';
import { message, phrase } from '#texts';
import type { Block, Row } from '../sheet.ts';
import { strong } from '../sheet.ts';
import { restraintWords } from '../words/say-standing.ts';
import type { SetOnRecord } from './handover-record.ts';

/** A set with any restraint has a tag at its rail lock; one that has none is looked for. */
export const restraintTable = (sets: readonly SetOnRecord[], house: House): readonly Block[] => {
  const rows = sets.flatMap(({ set, standing, restraints }) =>
    restraints.map(
      (each): Row => ({
        cells: [
          [strong(set.lineSet.id)],
          [
            restraintWords(each, house),
            ...(standing === null ? [phrase(house, '; as last known: look for it')] : []),
          ],
          [each.owner ?? phrase(house, 'nobody named')],
          [each.tag ?? phrase(house, 'none')],
        ],
        rule: 'hair',
      }),
    ),
  );
  if (rows.length === 0) {
    return [{ kind: 'text', words: [phrase(house, 'None is on record.')] }];
  }
  return [
    {
      kind: 'table',
      columns: [
        { head: phrase(house, 'Set'), align: 'left', share: 0.09 },
        { head: phrase(house, 'What, which way, rated, where'), align: 'left', share: 0.55 },
        { head: phrase(house, 'Owner'), align: 'left', share: 0.24 },
        { head: phrase(house, 'Tag'), align: 'left', share: 0.12 },
      ],
      rows,
    },
    {
      kind: 'text',
      words: [
        phrase(house, 'Look for each before a lock is opened. None is taken off that holds alone.'),
      ],
    },
  ];
};

const SERVICES = {
  paused: message('paused'),
  lockedOut: message('LOCKED OUT'),
} as const satisfies Partial<Record<ServiceState, string>>;

const serviceWords = (service: ServiceState | null, house: House): string =>
  service === 'paused' || service === 'lockedOut' ? phrase(house, SERVICES[service]) : '';

export const tagTable = (sets: readonly SetOnRecord[], house: House): readonly Block[] => {
  const tagged = sets.filter(
    ({ tag, service }) => tag !== null || service === 'lockedOut' || service === 'paused',
  );
  if (tagged.length === 0) {
    return [{ kind: 'text', words: [phrase(house, 'None is on record.')] }];
  }
  return [
    {
      kind: 'table',
      columns: [
        { head: phrase(house, 'Set'), align: 'left', share: 0.09 },
        { head: phrase(house, 'Tag'), align: 'left', share: 0.13 },
        { head: phrase(house, 'Service'), align: 'left', share: 0.24 },
        { head: phrase(house, 'Reason'), align: 'left', share: 0.54 },
      ],
      rows: tagged.map(
        ({ set, tag, service }): Row => ({
          cells: [
            [strong(set.lineSet.id)],
            [tag?.number ?? phrase(house, 'none')],
            [strong(serviceWords(service, house))],
            [tag?.reason ?? phrase(house, 'no reason on record')],
          ],
          rule: 'hair',
        }),
      ),
    },
  ];
};
