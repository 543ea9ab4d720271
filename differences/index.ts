export { type ChangedPlace, changedPlaces } from './changed-places.ts';
export {
  type Combination,
  type ContestedPlace,
  combine,
  type Side,
  type Three,
} from './combine.ts';
export {
  type DifferenceGroup,
  type DifferenceLine,
  sayDifference,
} from './say-difference.ts';
export { overlap, type Spot, spotKey } from './spot.ts';
