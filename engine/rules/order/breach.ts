/** How the judge says what is wrong at a step. */
import { type Finding, type Measure, measure } from '#findings';
import { metres } from '#quantities';
import type { Standing } from '#state';
import { ruleOf } from '../declared.ts';
import { raise } from '../raise.ts';
import type { OrderRuleCode } from './rule-codes.ts';
import type { Scene, Shortfall } from './scene.ts';
import type { Breach } from './verdict.ts';

type Wrong = {
  readonly rule: OrderRuleCode;
  readonly heightM?: number;
  readonly byN?: number;
  readonly measured?: Measure;
  readonly limit?: Measure;
  readonly facts?: Finding['facts'];
  readonly item?: string;
  readonly gallery?: string;
  /** The set as it would stand, where that is not how it stands now. */
  readonly after?: Standing;
};

const energyOf = ({ options }: Scene, standing: Standing): number | null =>
  options.releasableJ === undefined ? null : options.releasableJ(standing);

export const breach = (scene: Scene, wrong: Wrong): Breach => {
  const { rule, byN = null, measured, limit, facts = {}, item, gallery } = wrong;
  const heightM = wrong.heightM ?? scene.standing.height;
  return {
    rule,
    step: scene.step,
    where: metres(heightM),
    byN,
    says: ruleOf(rule)?.title ?? rule,
    releasableJ: energyOf(scene, { ...(wrong.after ?? scene.standing), height: metres(heightM) }),
    finding: raise(rule, {
      at: {
        set: scene.physics.set,
        heightM,
        ...(item === undefined ? {} : { item }),
        ...(gallery === undefined ? {} : { gallery }),
      },
      ...(measured === undefined ? {} : { measured }),
      ...(limit === undefined ? {} : { limit }),
      facts: { height: measure(heightM, 'length'), ...facts },
    }),
  };
};

/** A set that nothing holds, by the rule of the step that brought it there. */
export const unheld = (
  scene: Scene,
  rule: OrderRuleCode,
  { imbalanceN, byN, hold }: Shortfall,
  more: Omit<Wrong, 'rule'> = {},
): Breach =>
  breach(scene, {
    rule,
    byN,
    measured: measure(imbalanceN, 'imbalance'),
    limit: measure(hold.limitN, 'force'),
    ...more,
    facts: { what: hold.what, ...more.facts },
  });
