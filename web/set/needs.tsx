/** What nobody has said yet, and without which nothing is worked out. */
import { told } from '#texts';
import { Notice } from '../frame/notice.tsx';
import { useTell, useVoice } from '../language/use-tell.ts';
import type { SetReckoning } from '../reckoning/reckon.ts';

export const Needs = ({ each }: { readonly each: SetReckoning }) => {
  const tell = useTell();
  const voice = useVoice();
  const { plan, hang } = each.set;
  if (plan.known || hang === null || hang.deadHungAt !== null) return null;
  return (
    <Notice degree="caution" title={tell('no plan yet: something is not known')}>
      <ul className="plain-list">
        {plan.needs.map((need) => (
          <li key={need}>{told(voice, need)}</li>
        ))}
      </ul>
    </Notice>
  );
};
