/** Zones closed to people: the run under batten and arbor, and where a brick would fall. */

import type { House } from '#house';
import type { Standing, Step, WorkZone } from '#state';
import { phrase } from '#texts';
import { textWidth } from './lettering.ts';
import { boxBetween, type OrderFrame } from './order-frame.ts';
import type { Anchor, Rect, Shape, Style } from './shape.ts';
import { group, lettering } from './shape.ts';

/** As high as people are: the rest of the run is air. */
const PEOPLE_M = 2.2;

const CLOSED: Style = { hatch: 'closed' };

type Zone = {
  readonly boxes: readonly Rect[];
  readonly wordX: number;
  readonly anchor: Anchor;
  /** At its far end, where the word meets another's in the middle. */
  readonly far?: { readonly wordX: number; readonly anchor: Anchor };
};

const runZone = (frame: OrderFrame, style: Style): Zone => {
  const { xOf, battenM, y, guideX, arborHalf, deckY, side } = frame;
  const [left, right] = [xOf(battenM.left), xOf(battenM.right)];
  const top = y(PEOPLE_M);
  return {
    boxes: [
      boxBetween({ x: left, y: top }, { x: right, y: deckY }, style),
      boxBetween(
        { x: guideX - arborHalf - 3, y: top },
        { x: guideX + arborHalf + 3, y: deckY },
        style,
      ),
    ],
    wordX: (left + right) / 2,
    anchor: 'middle',
    far: side === 1 ? { wordX: right, anchor: 'end' } : { wordX: left, anchor: 'start' },
  };
};

const dropZone = (gallery: string, house: House, frame: OrderFrame, style: Style): Zone | null => {
  const floor = house.galleries.find(({ id }) => id === gallery)?.floor;
  if (floor === undefined || !floor.known) return null;
  const { at, y, guideX, arborHalf, side, deckY } = frame;
  const inner = guideX + side * (arborHalf + 3);
  return {
    boxes: [boxBetween({ x: at(3), y: y(floor.value) }, { x: inner, y: deckY }, style)],
    wordX: at(1),
    anchor: side === 1 ? 'start' : 'end',
  };
};

const zoneOf = (zone: WorkZone, house: House, frame: OrderFrame, style: Style): Zone | null =>
  zone.zone === 'run' ? runZone(frame, style) : dropZone(zone.gallery, house, frame, style);

/** Under the deck, where nothing else is drawn. */
const wordUnder = ({ wordX, anchor }: Zone, { deckY, letter }: OrderFrame, word: string): Shape =>
  lettering(wordX, deckY + letter * 1.25, word, letter, { anchor, backed: true });

const spanOf = ({ wordX, anchor }: Zone, width: number): readonly [number, number] => {
  const from = anchor === 'start' ? wordX : anchor === 'end' ? wordX - width : wordX - width / 2;
  return [from, from + width];
};

/** A word that meets another goes to the far end of its zone. */
const apart = (zone: Zone, words: readonly Zone[], word: string, frame: OrderFrame): Zone => {
  const { letter } = frame;
  const width = textWidth(word, letter) + letter / 2;
  const [from, to] = spanOf(zone, width);
  const isMet = words.some((other) => {
    const [start, end] = spanOf(other, width);
    return other !== zone && start < to && from < end;
  });
  return isMet && zone.far !== undefined ? { ...zone, ...zone.far } : zone;
};

/** Behind all other things. */
export const closedShapes = (
  { closed }: Pick<Standing, 'closed'>,
  house: House,
  frame: OrderFrame,
): readonly Shape[] => {
  const zones = closed.flatMap((zone) => {
    const drawn = zoneOf(zone, house, frame, CLOSED);
    return drawn === null ? [] : [drawn];
  });
  const word = phrase(house, 'closed');
  // Drop zones of two galleries lie one in the other and share one word.
  const words = zones.filter(
    ({ wordX }, index) => zones.findIndex((other) => other.wordX === wordX) === index,
  );
  return zones.length === 0
    ? []
    : [
        group(
          [
            ...zones.flatMap(({ boxes }) => boxes),
            ...words.map((zone) => wordUnder(apart(zone, words, word, frame), frame, word)),
          ],
          { part: 'closed' },
        ),
      ];
};

/** The zone that a step closes or opens, in the pencil that points. */
export const pointedZone = (step: Step, house: House, frame: OrderFrame): readonly Shape[] => {
  if (step.act !== 'close' && step.act !== 'reopen') return [];
  const isOpened = step.act === 'reopen';
  const style: Style = {
    stroke: 'blue',
    weight: isOpened ? 'mid' : 'pencil',
    ...(isOpened ? { dash: 'plan' } : {}),
  };
  const zone = zoneOf(step.zone, house, frame, style);
  if (zone === null) return [];
  const word = isOpened ? [wordUnder(zone, frame, phrase(house, 'open'))] : [];
  return [group([...zone.boxes, ...word], { part: 'pointed zone' })];
};
