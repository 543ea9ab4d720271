/** What a typed measure means in the other system, before it is taken: a wrong unit shows. */
import { type Dimension, formatQuantity, parseQuantity, type UnitSystem } from '#quantities';

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
  const read = parseQuantity(dimension, text);
  if (!read.ok || dimension === 'ratio' || dimension === 'count') return null;
  const say = (system: UnitSystem): string =>
    formatQuantity(dimension, read.value, system, { style: 'fine' });
  return (
    <span className="echo">
      reads as {say(units)}, {say(OTHER[units])}
    </span>
  );
};
