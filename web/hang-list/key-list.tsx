/** The keys of the hang list, to be read on the page. */
const KEYS: readonly (readonly [keys: string, what: string])[] = [
  ['Arrows, Tab', 'to the next cell; Home and End to the ends of the row'],
  ['Control + Home, End', 'to the first and the last row'],
  ['Enter or F2', 'types into the cell; a letter begins it anew'],
  ['Escape', 'leaves the cell as it was; ends the choice of several'],
  ['Shift + arrows', 'chooses several cells; with Control, to the edge'],
  ['Shift + Space', 'chooses whole rows'],
  ['Shift + click, or draw', 'chooses with the mouse; from the set number, whole rows'],
  ['Control + A', 'chooses all that is shown'],
  ['Control + C, V', 'copies; pastes from the cell in hand, from any spreadsheet'],
  ['Control + D', 'fills the first row chosen down into the others'],
  ['Delete', 'clears heights and depths; leaves whole rows chosen empty'],
  ['Control + Z, Y', 'undoes; does again'],
  ['/', 'to the field that finds; Enter there goes to the next row found'],
  ['Enter on a head', 'sorts by that column; arrows lead up to it'],
  ['F8', 'every set in rail order again'],
];

export const KeyList = () => (
  <details className="key-list">
    <summary>Keys of this list</summary>
    <p className="quiet">On an Apple keyboard Command stands for Control.</p>
    <dl>
      {KEYS.map(([keys, what]) => (
        <div key={keys}>
          <dt>{keys}</dt>
          <dd>{what}</dd>
        </div>
      ))}
    </dl>
  </details>
);
