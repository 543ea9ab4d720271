/** Two versions that began from one, as a person must see them before anything is saved. */
import {
  type ContestedPlace,
  combine,
  type DifferenceGroup,
  type DifferenceLine,
  overlap,
  type Side,
  sayDifference,
  type Three,
} from '#differences';
import { phrase, type Voice } from '#texts';
import { isSame, type JsonObject } from '../keeping/json.ts';

/** A choice holds for what theirs said when it was made; it falls when theirs changes. */
export type Choice = { readonly side: Side; readonly place: ContestedPlace };
export type Choices = ReadonlyMap<string, Choice>;

export type SaidPlace = {
  readonly place: ContestedPlace;
  /** The set or part that it is about. */
  readonly heading: string;
  readonly mine: readonly string[];
  readonly theirs: readonly string[];
  readonly chosen: Side | null;
};

export type Contest = {
  readonly mine: readonly DifferenceGroup[];
  readonly theirs: readonly DifferenceGroup[];
  readonly places: readonly SaidPlace[];
  /** What the choices make; null while one is open. */
  readonly result: JsonObject | null;
  /** What would be saved, against theirs. */
  readonly change: readonly DifferenceGroup[];
};

const holds = (choices: Choices, place: ContestedPlace): Side | null => {
  const choice = choices.get(place.key);
  return choice !== undefined && isSame(choice.place.theirs, place.theirs) ? choice.side : null;
};

/** Lines of one version that lie in a place, with the set or part that they are about. */
const linesIn = (groups: readonly DifferenceGroup[], { spot }: ContestedPlace) =>
  groups.flatMap(({ heading, lines }) =>
    lines.filter((line) => overlap(line.spot, spot)).map((line) => ({ heading, line })),
  );

export const contestOf = (three: Three, choices: Choices, voice: Voice): Contest => {
  const mine = sayDifference(three.began, three.mine, voice);
  const theirs = sayDifference(three.began, three.theirs, voice);
  const { contested } = combine(three);
  const places = contested.map((place): SaidPlace => {
    const [ours, others] = [linesIn(mine, place), linesIn(theirs, place)];
    const words = (lines: typeof ours) => {
      const said = lines.map(({ line }) => line.words);
      return said.length === 0 ? [phrase(voice, 'as both began')] : said;
    };
    return {
      place,
      heading: [...ours, ...others][0]?.heading ?? '',
      mine: words(ours),
      theirs: words(others),
      chosen: holds(choices, place),
    };
  });
  const isOpen = places.some(({ chosen }) => chosen === null);
  const sides = places.flatMap(({ place, chosen }) =>
    chosen === null ? [] : [[place.key, chosen] as const],
  );
  const result = isOpen ? null : combine(three, new Map(sides)).document;
  const change = result === null ? [] : sayDifference(three.theirs, result, voice);
  return { mine, theirs, places, result, change };
};

export const isContested = (line: DifferenceLine, places: readonly SaidPlace[]): boolean =>
  places.some(({ place }) => overlap(line.spot, place.spot));
