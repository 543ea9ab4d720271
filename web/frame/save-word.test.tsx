import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { asSaved, type Kept, type SaveState } from '../keeping/kept.ts';
import { SaveWord } from './save-word.tsx';

const kept = (id: string, save: SaveState): Kept => ({
  ...asSaved({
    id,
    kind: 'show',
    revision: 4,
    savedAt: '2026-11-25T14:31:00Z',
    savedBy: 'head flyperson',
    why: '',
    remark: '',
    document: {},
  }),
  save,
});

const said = (show: SaveState, house: SaveState, keptOnDevice = true): string =>
  renderToStaticMarkup(
    <SaveWord
      show={kept('show:a', show)}
      others={[kept('house:a', house), null]}
      keptOnDevice={keptOnDevice}
    />,
  );

describe('the word on saving', () => {
  it('is the revision of the show where all is saved', () => {
    expect(said({ is: 'saved' }, { is: 'saved' })).toContain('saved, revision 4');
  });

  it('never reads as saved while the house is not', () => {
    expect(said({ is: 'saved' }, { is: 'unreached' })).toContain('server not reached');
    expect(said({ is: 'saved' }, { is: 'unreached' }, false)).toContain('do not close the page');
    expect(said({ is: 'waiting' }, { is: 'refused', title: '', refusals: [] })).toContain(
      'the server refused it',
    );
  });
});
