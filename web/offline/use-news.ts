/** Whether something must be said of the server or of a newer version; part of the first view. */
import { useSyncExternalStore } from 'react';
import type { Open } from '../keeping/kept.ts';
import { type BuildNews, buildNews, onBuildNews, ownBuild } from './house-fetch.ts';

export const isNewer = ({ newest }: BuildNews, own: string | null): boolean =>
  own !== null && newest !== null && newest !== own;

export const useBuildNews = (): BuildNews => useSyncExternalStore(onBuildNews, buildNews);

export const useHasNews = ({ asOf }: Pick<Open, 'asOf'>): boolean => {
  const news = useBuildNews();
  return asOf !== null || news.isRefused || isNewer(news, ownBuild());
};
