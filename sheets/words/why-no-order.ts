/** Why there is no order to work by, in sentences that a crew can act on. */
import type { House } from '#house';
import { type NotAsked, type WorkedOrder, whyNotPrinted } from '#orders';
import type { Refusal } from '#outcome';
import type { OrderVerdict } from '#rules';
import { afterName, sayFinding } from './say-finding.ts';
import { sayPlan } from './say-plan.ts';
import { whyWords } from './why-words.ts';

const UNKNOWN = 'unknown';

/** What is not known in one sentence, then what was asked wrongly in one each. */
const askedWords = (refusals: readonly Refusal[], house: House): readonly string[] => {
  const needs = refusals.filter(({ found }) => found === UNKNOWN);
  const wrong = refusals.filter(({ found }) => found !== UNKNOWN);
  const known = needs.map(({ accepted }) => afterName(accepted, house)).join('; ');
  return [
    ...(needs.length === 0 ? [] : [`Not known: ${known}.`]),
    ...wrong.map(
      ({ found, accepted }) =>
        `${afterName(found, house)}; wanted is ${afterName(accepted, house)}.`,
    ),
  ];
};

const judgeWords = ({ broken, refused }: OrderVerdict, house: House): readonly string[] => {
  const at = (step: number): string => (step < 0 ? 'before the first step' : `at step ${step + 1}`);
  if (refused !== null) {
    const { found, accepted } = refused.refusal;
    return [`The judge cannot replay it ${at(refused.step)}: ${found}; wanted is ${accepted}.`];
  }
  if (broken === null) return [];
  const { sentence } = sayFinding(broken.finding, house);
  return [
    `An order was found, and the judge refuses it ${at(broken.step)}: ${sentence} ` +
      `[${broken.rule}]`,
  ];
};

/** None where the order may be worked by. */
export const sayWhyNoOrder = (asked: WorkedOrder | NotAsked, house: House): readonly string[] => {
  if ('refusals' in asked) return askedWords(asked.refusals, house);
  const { plan, order, question } = asked;
  if (!('found' in plan)) return sayPlan(plan, house, question.start.standing);
  const judged = judgeWords(order.verdict, house);
  if (judged.length > 0) return judged;
  if (order.steps.length === 0) return ['Nothing is left to do: it stands as it is wanted.'];
  const why = whyNotPrinted(order);
  return why === null
    ? []
    : [`An order was found, and it is not printed: ${whyWords(why, house)}.`];
};
