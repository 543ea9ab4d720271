/** What a post reads; where it is longer than the screen it scrolls, above the buttons. */
import type { ReactNode } from 'react';
import { useTell } from '../language/use-tell.ts';

export const PostBody = ({ children }: { readonly children: ReactNode }) => {
  const tell = useTell();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls is reached by keys
    <section className="post-body" aria-label={tell('What is to be done')} tabIndex={0}>
      {children}
    </section>
  );
};
