/** Where the page speaks of itself; what it says is fetched when there is something to say. */
import { lazy, Suspense } from 'react';
import type { Open } from '../keeping/kept.ts';
import { useHasNews } from './use-news.ts';

const News = lazy(async () => ({ default: (await import('./news.tsx')).News }));

export const PageNews = ({ open }: { readonly open: Open }) =>
  useHasNews(open) ? (
    <Suspense fallback={null}>
      <News open={open} />
    </Suspense>
  ) : null;
