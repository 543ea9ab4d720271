/** What must hold of every message in any weather. Each has a planted bug that breaks it. */
export const DELIVERY_RULES = {
  once: {
    id: 'SIM-01',
    says: 'A command is recorded at most once, however often it is sent or comes.',
  },
  kept: {
    id: 'SIM-02',
    says: 'What was acknowledged is in the record, as it was acknowledged, after every crash.',
  },
  order: {
    id: 'SIM-03',
    says: 'A device applies events strictly in sequence: none twice, none past a gap.',
  },
  agree: {
    id: 'SIM-04',
    says: 'When the weather clears, every device has the whole record, and the same.',
  },
  told: {
    id: 'SIM-05',
    says: 'Whoever gave a command is told what became of it, and a refusal says why.',
  },
  refused: {
    id: 'SIM-06',
    says: 'What was refused, or said to be not recorded, is not in the record and never comes.',
  },
  live: {
    id: 'SIM-07',
    says: 'A device that calls itself live has what the house had 21 seconds ago.',
  },
  fresh: {
    id: 'SIM-08',
    says: 'What rests on a state is recorded only where its giver had seen the last of it.',
  },
  waiting: {
    id: 'SIM-09',
    says: 'What rests on a state is given only by a device that is live, and never waits.',
  },
  committed: {
    id: 'SIM-10',
    says: 'No device hears of an event that is not in the record.',
  },
  chain: {
    id: 'SIM-11',
    says: 'After every crash the log opens and its chain holds.',
  },
  clock: {
    id: 'SIM-12',
    says: 'The time of the record never goes back, and no order rests on the clock of a device.',
  },
} as const;

export type DeliveryRule = keyof typeof DELIVERY_RULES;

/** A rule was broken: in which world, when, and how. */
export class RuleBroken extends Error {
  readonly rule: DeliveryRule;

  constructor(rule: DeliveryRule, how: string) {
    super(`${DELIVERY_RULES[rule].id} ${DELIVERY_RULES[rule].says} Here: ${how}`);
    this.rule = rule;
  }
}
