/** The wall in a call: each set as it truly stands, and in a word what is done on it. */
import { assessorOf, type SetAssessment } from '#assessment';
import { stateAfter } from '#call';
import { type WallSigns, wallSigns } from '#drawings';
import type { House } from '#house';
import type { Show } from '#show';
import type { HouseNow, HouseState, SetNow } from '#state';
import { phrase } from '#texts';
import { stateWord, workWord } from './desk-words.ts';

/** What is still to be done by the order: the plan is a difference, and never drawn as a record. */
const toDoWord = ({ plan }: SetNow, house: House): string | null => {
  const left = plan === null ? 0 : plan.steps.length - plan.done;
  return left === 0 ? null : phrase(house, '{count} TO DO', { count: left });
};

const holdOf = (set: SetNow, recorded: WallSigns['hold']): WallSigns['hold'] => {
  const { leave, held, standing } = set;
  if (standing === null) return 'unknown';
  if (leave?.step.act === 'fly') {
    return leave.step.to < leave.before.height ? 'movingIn' : 'movingOut';
  }
  if (held === 'unheld') return 'danger';
  return set.lockDoubt !== null && recorded === 'lock' ? 'unknown' : recorded;
};

const wordOf = (set: SetNow, recorded: string | null, house: House): string | null => {
  if (set.standing === null || set.held === 'unheld') return stateWord(set, house);
  const isOnWay = set.leave !== null || set.asked !== null;
  if (isOnWay) return workWord(set, house);
  if (set.tag !== null) return recorded;
  if (set.lockDoubt !== null) return phrase(house, 'LOCK IN DOUBT');
  const toDo = toDoWord(set, house);
  if (toDo !== null) return toDo;
  return set.knowledge.basis === 'carriedOver' ? phrase(house, 'CARRIED OVER') : recorded;
};

/** Age is left out: what was found in the call is of the call, and the rest was carried over. */
export const signsInCall = (assessed: SetAssessment, set: SetNow, house: House): WallSigns => {
  const recorded = wallSigns(assessed, house, null);
  const isOld = set.standing !== null && set.knowledge.basis === 'carriedOver';
  return {
    balance: set.standing === null ? 'unknown' : isOld ? 'stale' : recorded.balance,
    hold: holdOf(set, recorded.hold),
    word: wordOf(set, recorded.word, house),
  };
};

const withoutLeave = (set: SetNow): SetNow => (set.leave === null ? set : { ...set, leave: null });

/** While leave is out the set is drawn as far as it was counted and told. */
const stateOf = (now: HouseNow, state: HouseState): HouseState => {
  const sets = Object.fromEntries(
    Object.entries(now.sets).map(([id, set]) => [id, withoutLeave(set)]),
  );
  return stateAfter(state, { ...now, sets }, { by: '', atMs: 0, nameOf: (by) => by });
};

export type WallDocuments = {
  readonly house: House;
  readonly show: Show;
  readonly state: HouseState;
};

type Known = { readonly assessed: SetAssessment; readonly set: SetNow };

/** One wall after the other: a set on which nothing happened is not worked out again. */
export class CallWallSets {
  #documents: WallDocuments | null = null;
  #known: ReadonlyMap<string, Known> = new Map();

  of = (documents: WallDocuments, now: HouseNow): readonly SetAssessment[] => {
    const { house, show, state } = documents;
    const isSame = this.#documents?.house === house && this.#documents.show === show;
    const before = isSame ? this.#known : new Map<string, Known>();
    const assessed = assessorOf(house, show, stateOf(now, state));
    const known = new Map<string, Known>();
    for (const lineSet of house.lineSets) {
      const set = now.sets[lineSet.id];
      const was = before.get(lineSet.id);
      if (set === undefined) continue;
      known.set(lineSet.id, was?.set === set ? was : { set, assessed: assessed(lineSet) });
    }
    this.#documents = documents;
    this.#known = known;
    return [...known.values()].map((each) => each.assessed);
  };

  signs = (assessed: SetAssessment): WallSigns | null => {
    const known = this.#known.get(assessed.lineSet.id);
    const house = this.#documents?.house;
    return known === undefined || house === undefined
      ? null
      : signsInCall(assessed, known.set, house);
  };
}
