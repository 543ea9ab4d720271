/** What the parts of a show say of one another, and of the house in which it hangs. */
import type { House } from '#house';
import type { Cue, Hang, Item, Show } from '#show';
import type { Faults } from './faults.ts';
import { describe, pathTo } from './json.ts';
import { refuseDuplicates, refuseUnknown } from './references.ts';

/** Hangs in which nothing was wrong beside these cues; with a memory they come again. */
const sound = new WeakMap<Hang, readonly Cue[]>();

export const checkShow = (show: Show, faults: Faults): void => {
  const hung = new Map<string, number>();
  for (const [index, hang] of show.hangs.entries()) {
    const path = pathTo('hangs', index);
    checkHungOnce(hang, { path, index, hung }, faults);
    if (sound.get(hang) === show.cues) {
      checkCoupling(hang, { path, show }, faults);
      continue;
    }
    checkHang(hang, { path, show }, faults);
    if (faults.count() === 0) sound.set(hang, show.cues);
  }
  for (const set of Object.keys(show.keptEmpty)) {
    if (!hung.has(set)) continue;
    faults.refuse('keptEmptyHung', pathTo('keptEmpty', set), {
      found: `line set ${set}, on which ${pathTo('hangs', hung.get(set) ?? 0)} hangs`,
      accepted: 'a set kept empty, or something on it, not both',
    });
  }
  checkCues(show.cues, faults);
};

const checkHungOnce = (
  { set }: Hang,
  { path, index, hung }: { path: string; index: number; hung: Map<string, number> },
  faults: Faults,
): void => {
  const first = hung.get(set);
  if (set !== '' && first !== undefined) {
    faults.refuse('setTwice', pathTo(path, 'set'), {
      found: `${describe(set)}, which ${pathTo('hangs', first)} is on`,
      accepted: 'one hang for each line set, with all that is on it',
    });
  } else hung.set(set, index);
};

type Spot = { readonly path: string; readonly show: Show };

const checkHang = (hang: Hang, { path, show }: Spot, faults: Faults): void => {
  refuseDuplicates(hang.items, pathTo(path, 'items'), faults);
  checkTrimNames(hang, path, faults);
  checkCoupling(hang, { path, show }, faults);
  for (const [index, item] of hang.items.entries()) {
    checkItem(item, { path: pathTo(pathTo(path, 'items'), index), show }, faults);
  }
};

const checkTrimNames = ({ trims }: Hang, path: string, faults: Faults): void => {
  const seen = new Set<string>();
  for (const [index, { name }] of trims.entries()) {
    if (name !== '' && seen.has(name)) {
      faults.refuse('duplicateId', pathTo(pathTo(pathTo(path, 'trims'), index), 'name'), {
        found: `${describe(name)} again`,
        accepted: 'a name for each height of this set',
      });
    }
    seen.add(name);
  }
};

const checkCoupling = (hang: Hang, { path, show }: Spot, faults: Faults): void => {
  for (const [index, other] of hang.coupledWith.entries()) {
    const here = pathTo(pathTo(path, 'coupledWith'), index);
    if (other === '' || hang.set === '') continue;
    if (other === hang.set) {
      faults.refuse('coupledSelf', here, { found: describe(other), accepted: 'other line sets' });
      continue;
    }
    const partner = show.hangs.find(({ set }) => set === other);
    if (partner?.coupledWith.includes(hang.set)) continue;
    const why = partner ? `is not coupled with ${hang.set}` : 'is not hung';
    faults.refuse('coupledOneWay', here, {
      found: `${describe(other)}, which ${why}`,
      accepted: 'a hung set that names this one too',
    });
  }
};

const isLoom = ({ kind }: Item): boolean => kind === 'loom' || kind === 'deckLoom';

const checkItem = (item: Item, { path, show }: Spot, faults: Faults): void => {
  const { kind, takeoff } = item;
  if (!faults.sound(pathTo(path, 'kind'), pathTo(pathTo(path, 'takeoff'), 'by'))) return;
  if (isLoom(item) !== (takeoff.by === 'loom')) {
    faults.refuse('loomMismatch', pathTo(pathTo(path, 'takeoff'), 'by'), {
      found: `take-off by ${takeoff.by} of an item of kind ${kind}`,
      accepted: 'by loom for kinds loom and deckLoom, and for these only',
    });
  }
  if (takeoff.by === 'mass' && takeoff.hem !== null && kind !== 'cloth') {
    faults.refuse('hemWithoutCloth', pathTo(pathTo(path, 'takeoff'), 'hem'), {
      found: `a hem on an item of kind ${kind}`,
      accepted: 'a hem on a cloth, or no hem',
    });
  }
  checkReleases(item, { path, show }, faults);
};

const checkReleases = (item: Item, { path, show }: Spot, faults: Faults): void => {
  const numbers = show.cues.map(({ number }) => number);
  const whole = item.takeoff.by === 'mass' ? item.takeoff.mass : undefined;
  for (const [index, { mass, cue }] of item.releases.entries()) {
    const here = pathTo(pathTo(path, 'releases'), index);
    const reference = { found: cue ?? '', known: numbers, path: pathTo(here, 'cue') };
    refuseUnknown('cueUnknown', reference, faults);
    if (!whole?.known || !mass.known || mass.value <= whole.value) continue;
    faults.refuse('releaseTooHeavy', pathTo(here, 'mass'), {
      found: `${mass.value.toFixed(1)} kg of an item of ${whole.value.toFixed(1)} kg`,
      accepted: 'at most the mass of the item',
    });
  }
};

const checkCues = (cues: readonly Cue[], faults: Faults): void => {
  const seen = new Map<string, number>();
  for (const [index, cue] of cues.entries()) {
    const path = pathTo('cues', index);
    const key = `${cue.number} of ${cue.set}`;
    const first = seen.get(key);
    if (cue.number !== '' && cue.set !== '' && first !== undefined) {
      faults.refuse('cueTwice', pathTo(path, 'number'), {
        found: `cue ${cue.number} for line set ${cue.set}, which ${pathTo('cues', first)} is`,
        accepted: 'one move for each line set in a cue',
      });
    } else seen.set(key, index);
    if (cue.from === cue.to && !cue.releases && faults.sound(path)) {
      faults.refuse('cueIdle', pathTo(path, 'to'), {
        found: 'the height from which it starts, with nothing released',
        accepted: 'another height, or "releases": true',
      });
    }
  }
};

/** The heading of a show or of a record names the house that it belongs to. */
export const checkHouseId = (houseId: string, house: House, faults: Faults): boolean => {
  if (houseId === '' || houseId === house.id) return true;
  faults.refuse('houseOther', 'house', {
    found: describe(houseId),
    accepted: `${describe(house.id)}, the house that it is read with`,
  });
  return false;
};
