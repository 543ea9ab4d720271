export type { BlankHouse } from './blank.ts';
export { blankHouse, blankShow, blankState } from './blank.ts';
export type { ComputeInput } from './compute/compute-input.ts';
export { computeInput, isComputeName } from './compute/compute-input.ts';
export type {
  BalanceInput,
  BricksInput,
  ComputeInputs,
  ComputeName,
  MixInput,
  PullTestInput,
  ReachInput,
  TakeoffInput,
} from './compute/inputs.ts';
export { COMPUTE_NAMES } from './compute/inputs.ts';
export type { BareSetInput } from './compute/set-inputs.ts';
export type { Change } from './difference.ts';
export { differenceOf } from './difference.ts';
export type { DocumentKind } from './envelope.ts';
export { DOCUMENT_KINDS } from './envelope.ts';
export type { Json, JsonObject } from './json.ts';
export type { OrderDocument, OrderOfWork } from './order-of-work.ts';
export type { HouseDocument } from './read-house.ts';
export { readHouse, readHouseValue } from './read-house.ts';
export { readJson } from './read-json.ts';
export { readOrder, readOrderValue } from './read-order.ts';
export type { ShowDocument } from './read-show.ts';
export { readShow, readShowValue } from './read-show.ts';
export type { StateDocument } from './read-state.ts';
export { readState, readStateValue } from './read-state.ts';
export type { DocumentRefusal } from './refusal-codes.ts';
export { DOCUMENT_REFUSALS } from './refusal-codes.ts';
export { schemaOf } from './schema-of.ts';
export type { RowOfSets } from './sets-in-row.ts';
export { setsInRow } from './sets-in-row.ts';
export type { JsonSchema, ReadMemory } from './shape/shape.ts';
export type { Asked, Unknown } from './unknowns.ts';
export { askedOf, unknownsOf } from './unknowns.ts';
export { writeDocument } from './write-document.ts';
export { orderDocument } from './write-order.ts';
export { stateDocument } from './write-state.ts';
