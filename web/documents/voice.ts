/** In whose trade words a document is spoken of: those of its house, also where none is in view. */
import { useMemo } from 'react';
import type { Voice } from '#texts';
import type { JsonObject } from '../keeping/json.ts';
import type { Open } from '../keeping/kept.ts';
import { useVoice } from '../language/use-tell.ts';

export const useTradeVoice = (open: Open, document: JsonObject): Voice => {
  const { tongue } = useVoice();
  const id = document['house'] ?? document['id'];
  const house = Object.values(open.documents).find(
    (each) => each.kind === 'house' && each.document['id'] === id,
  );
  const words = (house?.document ?? document)['words'] === 'UK' ? 'UK' : 'US';
  return useMemo(() => ({ words, tongue }), [words, tongue]);
};
