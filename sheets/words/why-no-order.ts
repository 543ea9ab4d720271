/** Why there is no order to work by, in sentences that a crew can act on. */

import type { House } from '#house';
import { type NotAsked, type WorkedOrder, whyNotPrinted } from '#orders';
import type { Refusal } from '#outcome';
import type { OrderVerdict } from '#rules';
import { phrase, told } from '#texts';
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
    ...(needs.length === 0 ? [] : [phrase(house, 'Not known: {known}.', { known })]),
    ...wrong.map(({ found, accepted }) =>
      phrase(house, '{afterName}; wanted is {afterName2}.', {
        afterName: afterName(found, house),
        afterName2: afterName(accepted, house),
      }),
    ),
  ];
};

const judgeWords = ({ broken, refused }: OrderVerdict, house: House): readonly string[] => {
  const at = (step: number): string =>
    step < 0
      ? phrase(house, 'before the first step')
      : phrase(house, 'at step {step}', { step: step + 1 });
  if (refused !== null) {
    const { found, accepted } = refused.refusal;
    return [
      phrase(house, 'The judge cannot replay it {at}: {found}; wanted is {accepted}.', {
        at: at(refused.step),
        found: told(house, found),
        accepted: told(house, accepted),
      }),
    ];
  }
  if (broken === null) return [];
  const { sentence } = sayFinding(broken.finding, house);
  return [
    phrase(house, 'An order was found, and the judge refuses it {at}: {sentence} ' + '[{rule}]', {
      at: at(broken.step),
      sentence,
      rule: broken.rule,
    }),
  ];
};

/** None where the order may be worked by. */
export const sayWhyNoOrder = (asked: WorkedOrder | NotAsked, house: House): readonly string[] => {
  if ('refusals' in asked) return askedWords(asked.refusals, house);
  const { plan, order, question } = asked;
  if (!('found' in plan)) return sayPlan(plan, house, question.start.standing);
  const judged = judgeWords(order.verdict, house);
  if (judged.length > 0) return judged;
  if (order.steps.length === 0)
    return [phrase(house, 'Nothing is left to do: it stands as it is wanted.')];
  const why = whyNotPrinted(order);
  return why === null
    ? []
    : [
        phrase(house, 'An order was found, and it is not printed: {why}.', {
          why: whyWords(why, house),
        }),
      ];
};
