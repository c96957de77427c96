import { DomainError } from '../figure/domain-error.ts';
import { checkedBacklash } from '../gears/backlash.sums.ts';
import type { Bore, Gear, Material } from '../gears/gear.ts';
import { gearBlank } from '../gears/spur.sums.ts';
import { unitOfPitch } from '../gears/tooth.ts';
import { checkedTooth } from '../gears/wheel.ts';
import { toDegrees } from '../values/angle.ts';
import type { Length, LengthUnit } from '../values/length.ts';
import { printShort } from '../values/print.ts';
import type { PlanAsked, Readings, WantedPart } from './asked.ts';
import { type ChosenCutter, chosenCutter } from './chosen.ts';
import { type ChosenDividing, chosenDividing } from './chosen-dividing.ts';
import type { Need, SetUp } from './operation.ts';
import { betweenCentres, onTheHead } from './set-ups.ts';
import type { ShopNow } from './shop-now.ts';

/** Everything that the phases of one routing share. unit: of the gear's pitch; shopUnit: of turning, speeds and times. */
export type Job = {
  readonly wanted: WantedPart;
  readonly gear: Gear;
  readonly shop: ShopNow;
  readonly readings: Readings;
  readonly unit: LengthUnit;
  readonly shopUnit: LengthUnit;
  readonly material: Material;
  readonly face: Length | null;
  readonly blank: ReturnType<typeof gearBlank>;
  readonly backlash: Length;
  readonly cutter: ChosenCutter;
  readonly dividing: ChosenDividing;
  readonly mandrel: readonly Need[];
  readonly lathe: SetUp;
  readonly mill: SetUp;
};

/** The metal that is cut: what the blank is of, not what was wished for. Unknown stays unknown, and is run slowly. */
const materialOf = (asked: PlanAsked): Material => (asked.way === 'ring and hub' ? asked.blank.ring.material : asked.blank.material);

/** The bore that is wanted; while nobody has said which, that of the wheel it is made from. */
function boreOf(asked: PlanAsked): Bore | null {
  if (asked.wanted.gear.bore || asked.way === 'make from stock') return asked.wanted.gear.bore;
  return asked.way === 'ring and hub' ? asked.blank.hub.gear.bore : asked.blank.gear.bore;
}

/** Every figure of a routing is that of straight teeth. */
function refuseHelix({ mark, gear: { teeth, helix } }: WantedPart): void {
  if (!helix) return;
  throw new DomainError({
    given: `${mark} is a helical wheel, ${teeth} teeth at ${printShort(toDegrees(helix.angle), 2)}°.`,
    limit: 'No routing is worked out for helical teeth: its figures would be those of straight ones.',
    tryThis: 'Its sizes, its cutter and how to mill its teeth stand on the page of the part.',
    about: ['helix'],
  });
}

/** Throws DomainError for a wheel that Backgear has no figures for. */
export function jobOf(asked: PlanAsked): Job {
  const { wanted, shop, readings } = asked;
  refuseHelix(wanted);
  const gear: Gear = { ...wanted.gear, bore: boreOf(asked) };
  const unit = unitOfPitch(gear.pitch);
  const dividing = chosenDividing(gear.teeth, shop, asked.circle);
  return {
    wanted,
    gear,
    shop,
    readings,
    unit,
    shopUnit: shop.unit ?? unit,
    material: materialOf(asked),
    face: gear.face,
    blank: gearBlank(gear),
    backlash: checkedBacklash(checkedTooth(gear), wanted.backlash),
    cutter: chosenCutter(gear, shop),
    dividing,
    mandrel: gear.bore ? [{ kind: 'mandrel', bore: gear.bore }] : [],
    lathe: betweenCentres(shop.lathe, gear.bore),
    mill: onTheHead(shop.mill, gear.bore, dividing.at),
  };
}
