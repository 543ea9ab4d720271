/**
 * Every reason for which this room refuses a document. A code is never reused and never
 * renumbered. Faults inside a measure ("35 pounds of") keep the code of `#quantities`.
 */

export type DocumentRefusal = {
  readonly code: string;
  readonly title: string;
  /** One sentence: what was found, and why it is not taken. */
  readonly meaning: string;
};

const code = (id: string, title: string, meaning: string): DocumentRefusal => ({
  code: id,
  title,
  meaning,
});

/** The text, before anything in it means something. */
const TEXT = {
  notText: code('DOC-001', 'Not text', 'A document is read from text, and this is none.'),
  tooLarge: code('DOC-002', 'Too large', 'The text is longer than 8 388 608 characters.'),
  empty: code('DOC-003', 'Empty', 'There is nothing in the text.'),
  notJson: code('DOC-004', 'Not JSON', 'The text breaks the grammar of JSON (RFC 8259).'),
  truncated: code('DOC-005', 'Cut off', 'The text ends before the document does.'),
  trailing: code('DOC-006', 'More text after the end', 'Something follows the document.'),
  tooDeep: code('DOC-007', 'Too deep', 'Lists and objects lie more than 40 deep in one another.'),
  duplicateKey: code('DOC-008', 'Key twice', 'One object has a key twice, and only one can hold.'),
  hostileKey: code(
    'DOC-009',
    'Key not taken',
    'The key is a name that programs use inside, such as "__proto__".',
  ),
  comment: code('DOC-010', 'Comment', 'JSON has no comments; a remark has a field of its own.'),
  trailingComma: code('DOC-011', 'Comma before the end', 'A comma is followed by no value.'),
  notFinite: code('DOC-012', 'Number too large', 'The number is beyond what can be counted with.'),
  moreFaults: code(
    'DOC-013',
    'More faults',
    'There are more than 1000 faults; the rest is not told.',
  ),
} as const;

/** Which document it is, and in which version. */
const ENVELOPE = {
  rootNotObject: code('DOC-020', 'Not a document', 'The whole is not an object in braces.'),
  formatMissing: code('DOC-021', 'Format missing', 'No "format" says what the document is.'),
  formatOther: code('DOC-022', 'Another document', 'The document is of another kind.'),
  versionMissing: code('DOC-023', 'Version missing', 'No "version" says how to read it.'),
  versionNotWhole: code('DOC-024', 'Version not a number', 'A version is a whole number.'),
  versionNewer: code(
    'DOC-025',
    'Newer than this program',
    'A newer program wrote the document, and this one would misread it.',
  ),
  versionUnknown: code('DOC-026', 'Version never used', 'No program ever wrote this version.'),
} as const;

/** Which fields there are, and what each may hold. */
const STRUCTURE = {
  fieldMissing: code('DOC-030', 'Field missing', 'A field is missing that has no default.'),
  fieldUnknown: code('DOC-031', 'Field not known', 'A field that nothing reads is a slip.'),
  wrongType: code('DOC-032', 'Wrong type', 'The value is of another type than is read here.'),
  badChoice: code('DOC-033', 'Not one of the choices', 'The word is none of those listed.'),
  tooMany: code('DOC-034', 'Too many', 'The list is longer than any theatre needs.'),
  tooFew: code('DOC-035', 'Too few', 'The list must have more in it to mean anything.'),
  nullWritten: code(
    'DOC-036',
    'Null',
    'Null may mean none or unknown; leave the field out, or write {"unknown": "why"}.',
  ),
  textBlank: code('DOC-040', 'Blank', 'The text is empty, or has spaces only.'),
  textTooLong: code('DOC-041', 'Text too long', 'The text would not fit on a sheet.'),
  textHidden: code(
    'DOC-042',
    'Hidden characters',
    'The text has characters that cannot be seen, or that turn the writing round.',
  ),
  badId: code('DOC-043', 'Not an id', 'An id is 1 to 32 letters, digits, dots, dashes.'),
  badDate: code('DOC-044', 'Not a date', 'A day is written as 2026-05-04, and must exist.'),
  badMoment: code(
    'DOC-045',
    'Not a moment',
    'A moment is written as 2026-05-04T14:31:00Z; without its zone it is two or more moments.',
  ),
  duplicateId: code('DOC-046', 'Id twice', 'Two things have one id, so neither can be named.'),
} as const;

/** Numbers, measures, and who stands behind them. */
const VALUES = {
  measureWithoutUnit: code(
    'DOC-050',
    'Number without a unit',
    'A measure is a text with its unit; no unit is guessed.',
  ),
  negative: code('DOC-051', 'Below zero', 'The value cannot be less than nothing.'),
  zero: code('DOC-052', 'Zero', 'The value cannot be nothing; what is unknown is left out.'),
  beyondReason: code('DOC-053', 'Beyond reason', 'No theatre has a value as large as this.'),
  notWhole: code('DOC-054', 'Not whole', 'Things are counted in whole numbers.'),
  countTooLarge: code('DOC-055', 'Count too large', 'Nobody owns or hangs as many as this.'),
  noBasis: code(
    'DOC-060',
    'No basis',
    'Nobody stands behind the value: neither it nor a "given" above it says how it is known.',
  ),
  valueAndUnknown: code('DOC-061', 'Known and unknown', 'One value is said to be both.'),
  neitherValue: code('DOC-062', 'Neither known nor unknown', 'The object holds no value.'),
  toleranceOther: code(
    'DOC-063',
    'Tolerance in another measure',
    'A tolerance is a share, or in the measure of its value.',
  ),
  toleranceTooLarge: code(
    'DOC-064',
    'Tolerance too large',
    'The tolerance is larger than the value itself, so the value says nothing.',
  ),
  sourceWithoutBasis: code(
    'DOC-065',
    'Source without its basis',
    'The value names its own source, person or day, so it cannot take its basis from above.',
  ),
} as const;

/** What a house must be to make sense. */
const HOUSE = {
  typeUnknown: code('DOC-070', 'Set type not known', 'No set type of the house has this name.'),
  typeCycle: code('DOC-071', 'Set types in a circle', 'A set type extends itself in the end.'),
  typeChain: code('DOC-072', 'Set types too far apart', 'A set type extends one that extends.'),
  railUnknown: code('DOC-073', 'Rail not known', 'No rail of the house has this id.'),
  kindUnknown: code('DOC-074', 'Brick kind not known', 'No brick kind of the house has this id.'),
  setInTwoBays: code('DOC-075', 'Set in two bays', 'One head block stands in one bay.'),
  galleryUnknown: code('DOC-076', 'Gallery not known', 'No gallery of the house has this id.'),
  stopsReversed: code('DOC-078', 'Stops reversed', 'The low stop is not below the high stop.'),
  workingOutside: code(
    'DOC-079',
    'Working height outside the travel',
    'The batten cannot reach the height at which it is worked on.',
  ),
  linesDisordered: code(
    'DOC-080',
    'Lift lines out of order',
    'Lift lines run from stage right to stage left, each at a place of its own.',
  ),
  lineOffBatten: code('DOC-081', 'Lift line off the batten', 'A line is beyond the batten.'),
  battenReversed: code('DOC-082', 'Batten reversed', 'The left end is not left of the right.'),
  arborMissing: code('DOC-083', 'Arbor missing', 'A purchase set has an arbor; this has none.'),
  arborUnwanted: code('DOC-084', 'Arbor not expected', 'Only a purchase set has an arbor.'),
  notPipeWeight: code(
    'DOC-085',
    'Kind not for pipe weight',
    'The brick kind is not said to serve as pipe weight.',
  ),
  reachReversed: code('DOC-086', 'Reach reversed', 'The lowest reach is not below the highest.'),
  boundsReversed: code('DOC-087', 'Bounds reversed', 'The first bound is not below the second.'),
  looksLikeItself: code('DOC-088', 'Looks like itself', 'A kind is mistaken only for others.'),
  operatingSide: code(
    'DOC-089',
    'Operating side contradicted',
    'The operating wall is on the other side than is said: x is positive to stage left.',
  ),
  onePlace: code('DOC-090', 'Two sets in one place', 'Two battens overlap at one distance.'),
  rodTooLong: code('DOC-091', 'Rod longer than the arbor', 'The usable rod is in the arbor.'),
  trimsMiscounted: code(
    'DOC-092',
    'Line trims miscounted',
    'There are not as many trims of lines as there are lift lines.',
  ),
  spliceOffBatten: code(
    'DOC-093',
    'Splice off the batten',
    'A joint of the tube is at its end or beyond it.',
  ),
  lineUnknown: code('DOC-094', 'Lift line not there', 'The set has fewer lift lines than this.'),
  wellsOverlap: code('DOC-095', 'Loft wells overlap', 'A line would stand on two loft wells.'),
  plasticModulusSmall: code(
    'DOC-096',
    'Plastic modulus too small',
    'The plastic modulus of a tube is above its section modulus; one of the two is a slip.',
  ),
  lockUnwanted: code('DOC-097', 'Rope lock not expected', 'Only a purchase set has a rope lock.'),
  sampleContradicts: code(
    'DOC-098',
    'Mass against its sample',
    'A kind weighs by its sample something else than is written, by more than its tolerance.',
  ),
  sampleDisordered: code(
    'DOC-099',
    'Sample disordered',
    'The mean of the bricks that were weighed is not between the lightest and the heaviest.',
  ),
} as const;

/** What a show must be, alone and in its house. */
const SHOW = {
  houseOther: code('DOC-100', 'For another house', 'The document belongs to another house.'),
  setUnknown: code('DOC-101', 'Set not known', 'No line set of the house has this id.'),
  setTwice: code('DOC-102', 'Set hung twice', 'Two hangs are on one set.'),
  keptEmptyHung: code('DOC-103', 'Kept empty and hung', 'The set is kept empty, yet hung.'),
  centreOutside: code('DOC-104', 'Centre outside the piece', 'The centre is a share, 0 to 1.'),
  loomMismatch: code(
    'DOC-105',
    'Loom and not a loom',
    'A loom is taken off by its length, and nothing else is.',
  ),
  hemWithoutCloth: code('DOC-106', 'Hem without cloth', 'Only a cloth has a hem that lands.'),
  coupledSelf: code('DOC-107', 'Coupled with itself', 'A set is coupled with other sets.'),
  coupledOneWay: code('DOC-108', 'Coupled one way', 'Each of two coupled sets names the other.'),
  outsideTravel: code('DOC-109', 'Outside the travel', 'The batten cannot reach the height.'),
  cueTwice: code('DOC-110', 'Cue twice', 'One set has one move in a cue.'),
  cueIdle: code('DOC-111', 'Cue that does nothing', 'The cue neither moves nor releases.'),
  cueUnknown: code('DOC-112', 'Cue not known', 'No cue of the show has this number.'),
  notShowKind: code('DOC-113', 'Kind not for shows', 'The kind does not serve as show brick.'),
  bricksWithoutArbor: code(
    'DOC-114',
    'Bricks without an arbor',
    'The set has no arbor, so there is nothing to put bricks on.',
  ),
  releaseTooHeavy: code('DOC-115', 'Release too heavy', 'More leaves than the item weighs.'),
  placesMiscounted: code(
    'DOC-116',
    'Places miscounted',
    'There are not as many places along the batten as there are units.',
  ),
  offBatten: code('DOC-117', 'Off the batten', 'The batten ends before the place of the item.'),
} as const;

/** What a record of how things stand must be. */
const STATE = {
  itemUnknown: code('DOC-130', 'Item not known', 'Nothing on this set has this id.'),
  intervalReversed: code('DOC-131', 'Heights reversed', 'The lower height is above the upper.'),
  lockedOutUntagged: code('DOC-132', 'Locked out, no tag', 'A lock-out has a tag with a number.'),
  sameTwice: code('DOC-133', 'Second person is the first', 'The check needs another person.'),
  laterThanRecord: code('DOC-134', 'Later than the record', 'It is dated after the record.'),
} as const;

/** What an order of work must be; whether it may be done is for the rules to judge. */
const ORDER = {
  showOther: code('DOC-140', 'For another show', 'The order belongs to another show.'),
  setWithoutArbor: code(
    'DOC-141',
    'Set without an arbor',
    'An order of work is for a set that is balanced with bricks, and this one is not.',
  ),
} as const;

export const REFUSALS = {
  ...TEXT,
  ...ENVELOPE,
  ...STRUCTURE,
  ...VALUES,
  ...HOUSE,
  ...SHOW,
  ...STATE,
  ...ORDER,
} as const satisfies Readonly<Record<string, DocumentRefusal>>;

export type RefusalName = keyof typeof REFUSALS;

/** All codes of this room, in order, for the generated list. */
export const DOCUMENT_REFUSALS: readonly DocumentRefusal[] = Object.values(REFUSALS);
