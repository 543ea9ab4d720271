/** The beam and floor sheet for a spreadsheet: one force, pressure or number in a cell. */
import type { HouseTotals, TotalState } from '#assessment';
import type { House, Known } from '#house';
import { FOOT, POUND_FORCE } from '#quantities';
import type { SheetContext } from '../context.ts';
import type { SheetData } from '../sheet.ts';

type Cells = SheetData['rows'][number];
type Reckoned<T> = { readonly known: true; readonly value: T } | { readonly known: false };

const WHEN: Readonly<Record<TotalState, string>> = {
  planned: 'as planned',
  bare: 'nothing hung',
  recorded: 'as recorded',
};

/** Units of the columns, and how many SI units make one of them. */
const unitsOf = (house: House) =>
  house.units === 'customary'
    ? {
        force: { name: 'lbf', per: POUND_FORCE },
        pressure: { name: 'psf', per: POUND_FORCE / FOOT ** 2 },
        along: { name: 'lbf/ft', per: POUND_FORCE / FOOT },
      }
    : {
        force: { name: 'N', per: 1 },
        pressure: { name: 'Pa', per: 1 },
        along: { name: 'N/m', per: 1 },
      };

type Unit = { readonly name: string; readonly per: number };

const plain = (value: number | null | undefined, { per }: Unit): number | null =>
  value === null || value === undefined ? null : Number((value / per).toFixed(1));

const known = (value: Known<number> | Reckoned<number>, unit: Unit): number | null =>
  value.known ? plain(value.value, unit) : null;

const NONE = null;
const COUNT: Unit = { name: 'number', per: 1 };

const bayRows = ({ house, assessment }: SheetContext): readonly Cells[] => {
  const { totals, sets } = assessment;
  const { force } = unitsOf(house);
  return house.bays.flatMap((bay): readonly Cells[] => {
    const own = totals.bays.filter((each) => each.bay === bay.id);
    const planned = own.find(({ when }) => when === 'planned');
    const rest = [NONE, NONE, NONE, NONE, NONE, NONE];
    const each = sets
      .filter(({ lineSet }) => bay.sets.includes(lineSet.id))
      .map(({ lineSet }): Cells => {
        const of = (way: 'vertical' | 'horizontal') => {
          const total = planned?.[way];
          const share = total?.known === true ? total.value.sets : [];
          return plain(share.find(({ set }) => set === lineSet.id)?.value, force);
        };
        const cells = [of('vertical'), of('horizontal'), NONE, NONE];
        return [`bay ${bay.id}`, lineSet.id, 'as planned', ...cells, ...rest];
      });
    const sums = own.map(({ when, vertical, horizontal }): Cells => {
      const down = vertical.known ? plain(vertical.value.value, force) : null;
      const side = horizontal.known ? plain(horizontal.value.value, force) : null;
      const limits = [known(bay.verticalLimit, force), known(bay.horizontalLimit, force)];
      return [`bay ${bay.id}`, 'all', WHEN[when], down, side, ...limits, ...rest];
    });
    const wire = planned === undefined ? null : known(planned.wire, force);
    const moving = planned?.moving.known === true ? planned.moving.value : null;
    return [
      ...each,
      ...sums,
      [
        `bay ${bay.id}`,
        moving?.set ?? '',
        'as planned, this set moving',
        plain(moving?.vertical, force),
        plain(moving?.horizontal, force),
        NONE,
        NONE,
        ...rest,
      ],
      [`bay ${bay.id}`, 'wire', 'more, battens out', wire, NONE, NONE, NONE, ...rest],
    ];
  });
};

const wellRows = ({ house, assessment }: SheetContext): readonly Cells[] => {
  const { force } = unitsOf(house);
  return assessment.totals.wells.map(({ well, when, force: total }): Cells => {
    const limit = house.loftWells.find(({ id }) => id === well)?.limit;
    return [
      `loft well ${well}`,
      'all',
      WHEN[when],
      total.known ? plain(total.value.value, force) : null,
      NONE,
      limit === undefined ? null : known(limit, force),
      ...[NONE, NONE, NONE, NONE, NONE, NONE, NONE],
    ];
  });
};

const floorRows = ({ house, assessment }: SheetContext): readonly Cells[] => {
  const { pressure, along } = unitsOf(house);
  const when = { recorded: 'as counted', allBack: 'every show brick' } as const;
  return assessment.totals.floors.map((total: HouseTotals['floors'][number]): Cells => {
    const gallery = house.galleries.find(({ id }) => id === total.gallery);
    return [
      gallery?.name ?? total.gallery,
      'all',
      when[total.when],
      ...[NONE, NONE, NONE, NONE],
      known(total.pressure, pressure),
      gallery === undefined ? null : known(gallery.floorLimit, pressure),
      known(total.lineLoad, along),
      gallery === undefined ? null : known(gallery.lineLoadLimit, along),
      known(total.courses, COUNT),
      gallery === undefined ? null : known(gallery.coursesAllowed, COUNT),
    ];
  });
};

export const beamAndFloorData = (context: SheetContext): SheetData => {
  const { force, pressure, along } = unitsOf(context.house);
  return {
    columns: [
      'part',
      'set',
      'state',
      `downward (${force.name})`,
      `sideways (${force.name})`,
      `limit downward (${force.name})`,
      `limit sideways (${force.name})`,
      `over the floor (${pressure.name})`,
      `limit over the floor (${pressure.name})`,
      `along a row (${along.name})`,
      `limit along a row (${along.name})`,
      'courses (number)',
      'courses allowed (number)',
    ],
    rows: [...bayRows(context), ...wellRows(context), ...floorRows(context)],
  };
};
