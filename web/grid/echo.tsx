/** What a typed measure means in the other system, before it is taken: a wrong unit shows. */

import {
  type Dimension,
  decimalMarkOf,
  formatQuantity,
  parseQuantity,
  type UnitSystem,
} from '#quantities';
import { useTell, useVoice } from '../language/use-tell.ts';

const OTHER: Readonly<Record<UnitSystem, UnitSystem>> = {
  customary: 'metric',
  metric: 'customary',
};

type EchoProps = {
  readonly text: string;
  readonly dimension: Dimension;
  readonly units: UnitSystem;
};

export const Echo = ({ text, dimension, units }: EchoProps) => {
  const tell = useTell();
  const voice = useVoice();
  const { tongue } = voice;
  const read = parseQuantity(dimension, text, { decimalMark: decimalMarkOf({ units, tongue }) });
  if (!read.ok || dimension === 'ratio' || dimension === 'count') return null;
  const say = (system: UnitSystem): string =>
    formatQuantity(dimension, read.value, { units: system, tongue }, { style: 'fine' });
  return (
    <span className="echo">
      {tell('reads as {own}, {other}', { own: say(units), other: say(OTHER[units]) })}
    </span>
  );
};
