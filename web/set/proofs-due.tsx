import type { Proofs } from '#sheets';
import { useTell } from '../language/use-tell.ts';
import { keyAt } from '../sheets-page/key-at.ts';
import { WordsView } from '../sheets-page/words-view.tsx';

/** What only a person at the rope can prove; a screen has nothing to tick. */
export const ProofsDue = ({ proofs }: { readonly proofs: Proofs | null }) => {
  const tell = useTell();
  if (proofs === null) return null;
  return (
    <section className="proofs" aria-labelledby="proofs-head">
      <h2 id="proofs-head">{tell('Proof still due by hand')}</h2>
      <ul>
        {proofs.items.map((words, index) => (
          <li key={keyAt(index)}>
            <WordsView words={words} />
          </li>
        ))}
      </ul>
    </section>
  );
};
