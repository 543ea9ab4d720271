/** What nobody has said yet, and without which nothing is worked out. */
import { Notice } from '../frame/notice.tsx';
import type { SetReckoning } from '../reckoning/reckon.ts';

export const Needs = ({ each }: { readonly each: SetReckoning }) => {
  const { plan, hang } = each.set;
  if (plan.known || hang === null || hang.deadHungAt !== null) return null;
  return (
    <Notice degree="caution" title="no plan yet: something is not known">
      <ul className="plain-list">
        {plan.needs.map((need) => (
          <li key={need}>{need}</li>
        ))}
      </ul>
    </Notice>
  );
};
