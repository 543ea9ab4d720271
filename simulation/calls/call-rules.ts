/**
 * What must hold of a call, by number: the invariants V1 to V15 of the-job.md 4.4 for every leave
 * that is given, then what a call itself promises. Each has a planted bug that breaks it.
 */
const rule = (id: string, says: string) => ({ id, says });

export const CALL_RULES = {
  held: rule('CALL-01', 'V1: no leave into a state, or over a way, in which a set is not held.'),
  locked: rule('CALL-02', 'V2: no leave on a set that stands with its lock open or its ring off.'),
  lockLimit: rule(
    'CALL-03',
    'V3: the lock counts for its limit only, for nothing while doubted, and is not opened past it.',
  ),
  collar: rule('CALL-04', 'V4: with the collar loose bricks are handled, and nothing else.'),
  dropZone: rule('CALL-05', 'V5: bricks are handled only over a closed zone with its marshal.'),
  oneGallery: rule('CALL-06', 'V6: one set at a gallery, and no gallery under another at work.'),
  neighbours: rule('CALL-07', 'V7: next to a set whose bricks are handled, nothing moves.'),
  clearWay: rule(
    'CALL-08',
    'V8: a set moves only in a closed zone, with marshal, rail and watcher.',
  ),
  coupled: rule('CALL-09', 'V9: one of two coupled sets does not move alone.'),
  outOfUse: rule('CALL-10', 'V10: a set that is paused, tagged or locked out does not change.'),
  keepOut: rule('CALL-11', 'V11: no leave into a volume that is to be kept free.'),
  known: rule('CALL-12', 'V12: on what is not known, leave is given to close zones and no more.'),
  register: rule('CALL-13', 'V13: a restraint goes on with its rating, one owner and a tag.'),
  limits: rule('CALL-14', 'V14: rods, arbor and stock of the gallery hold at every plate.'),
  nobody: rule('CALL-15', 'V15: no leave for a set that carries a person.'),
  expects: rule('CALL-16', 'What leave says that a step leads to is what the step leads to.'),
  taken: rule('CALL-17', 'No report of a person at their post is refused by a rule.'),
  explained: rule('CALL-18', 'Every refusal names a rule that there is.'),
  sameFold: rule('CALL-19', 'Every device comes to the state that the server has.'),
  read: rule('CALL-20', 'The state is what was reported: a contradiction leaves it unknown.'),
  twoPeople: rule('CALL-21', 'A step of two people had two: other persons, other devices.'),
  stopped: rule('CALL-22', 'After STOP no leave is given there until it is lifted.'),
  judged: rule('CALL-23', 'A set that is not held is said to be so, and only made safe.'),
  right: rule('CALL-24', 'Leave goes to the post whose work it is, and to who stands at it.'),
} as const;

export type CallRule = keyof typeof CALL_RULES;

/** A rule of a call was broken: which, and how. */
export class CallRuleBroken extends Error {
  readonly rule: CallRule;

  constructor(broken: CallRule, how: string) {
    super(`${CALL_RULES[broken].id} ${CALL_RULES[broken].says} Here: ${how}`);
    this.rule = broken;
  }
}
