/** A difference in words: by set or part, each line with its value before and after. */
import type { DifferenceGroup, DifferenceLine } from '#differences';
import { Glyph } from '../drawing/glyph-view.tsx';
import { useTell } from '../language/use-tell.ts';

type SaidProps = {
  readonly groups: readonly DifferenceGroup[];
  /** What stands where nothing differs. */
  readonly empty: string;
  /** Lines of places that both versions changed. */
  readonly isMarked?: (line: DifferenceLine) => boolean;
};

const Line = ({
  line,
  isMarked,
}: {
  readonly line: DifferenceLine;
  readonly isMarked: boolean;
}) => {
  const tell = useTell();
  return (
    <li className={isMarked ? 'contested' : undefined}>
      {isMarked ? (
        <span className="both-word">
          <Glyph name="caution" />
          {tell('both changed this:')}{' '}
        </span>
      ) : null}
      {line.words}
      {line.path === null ? null : <span className="code"> {line.path}</span>}
      {line.details.length === 0 ? null : (
        <details>
          <summary>{tell('what it says, {count} values', { count: line.details.length })}</summary>
          <ul>
            {line.details.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </details>
      )}
    </li>
  );
};

const never = (): boolean => false;

export const Said = ({ groups, empty, isMarked = never }: SaidProps) =>
  groups.length === 0 ? (
    <p className="quiet">{empty}</p>
  ) : (
    <dl className="said">
      {groups.map(({ key, heading, lines }) => (
        <div key={key}>
          <dt>{heading}</dt>
          <dd>
            <ul>
              {lines.map((line) => (
                <Line key={line.key} line={line} isMarked={isMarked(line)} />
              ))}
            </ul>
          </dd>
        </div>
      ))}
    </dl>
  );
