/** What to ask the other house: what nobody has written of it, and what waits for the answer. */
import { unknownsOf } from '#documents';
import type { House } from '#house';
import { message } from '#texts';
import type { FitAsked, Mapping, Question } from './types.ts';

const usedOf = ({ to, from }: FitAsked, mapping: Mapping) => {
  const used = new Set(from.show.hangs.flatMap(({ set }) => mapping[set] ?? []));
  return to.house.lineSets.filter(({ id }) => used.has(id));
};

/** "trims of the lift lines of line sets 1, 2: nobody measured them" has its holder and reason. */
const split = (said: string): Omit<Question, 'decides'> => {
  const [, named = said, why = ''] = /^(.*?)(?:: (.*))?$/.exec(said) ?? [];
  const at = named.lastIndexOf(' of ');
  const [what, of] =
    at < 0 ? [named, message('the house')] : [named.slice(0, at), named.slice(at + 4)];
  return { of, what, why };
};

const ofPlant = (house: House): readonly Question[] =>
  unknownsOf(house).map(({ what, blocks }) => ({ ...split(what), decides: blocks }));

const ofRecord = ({ to }: FitAsked, sets: readonly string[]): readonly Question[] => {
  const unsaid = sets.filter((set) => (to.state?.sets[set]?.service ?? null) === null);
  const uncounted = to.house.galleries.filter(({ id }) => to.state?.galleries[id] === undefined);
  return [
    ...(unsaid.length === 0
      ? []
      : [
          {
            of: `line set${unsaid.length > 1 ? 's' : ''} ${unsaid.join(', ')}`,
            what: message('whether free and in service on our dates'),
            why: '',
            decides: message('whether anything may hang there'),
          },
        ]),
    ...uncounted.map(({ name }) => ({
      of: name,
      what: message('count of loose bricks, by kind'),
      why: '',
      decides: message('whether there are bricks for the show, and where'),
    })),
  ];
};

/** Only of the house and of the sets that the show takes there. */
export const questionsFor = (asked: FitAsked, mapping: Mapping): readonly Question[] => {
  const lineSets = usedOf(asked, mapping);
  const ids = lineSets.map(({ id }) => id);
  return [...ofRecord(asked, ids), ...ofPlant({ ...asked.to.house, lineSets })];
};
