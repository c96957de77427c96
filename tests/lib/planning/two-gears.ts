import type { ShopOperation } from '../../../lib/planning/today.ts';
import { circlesFor } from '../../../lib/routing/circles-for.ts';
import { needWords, toolsFor } from '../../../lib/routing/needs.ts';
import { planRouting } from '../../../lib/routing/plan.ts';
import type { ShopNow } from '../../../lib/routing/shop-now.ts';
import type { AnyTool } from '../../../lib/tooling/tooling.ts';
import { shop, spare, wanted } from '../routing/halvorsen.ts';

const toolsOf = ({ cutters, plates, heads, mandrels, arbors, chucks, others }: ShopNow): AnyTool[] => [
  ...cutters,
  ...plates,
  ...heads,
  ...mandrels,
  ...arbors,
  ...chucks,
  ...others,
];

/** Both routings of story 1 as planning sees them, opened in one shop and looked at in another (a tool has come). Ids: 100 and 200 on. */
export function twoGears(opened: Partial<ShopNow> = {}, now: Partial<ShopNow> = opened): ShopOperation[] {
  const then = shop(opened);
  const { byMark } = circlesFor([wanted(22), wanted(28)], then);
  return (
    [
      [22, 31, 100],
      [28, 34, 200],
    ] as const
  ).flatMap(([teeth, from, first]) => {
    const part = wanted(teeth);
    const circle = byMark.get(part.mark);
    if (!circle) throw new Error('no circle');
    const { operations } = planRouting({ way: 're-cut a spare', wanted: part, blank: spare(from), shop: then, readings: {}, circle });
    const id = new Map(operations.map(({ key }, place) => [key, first + place]));
    return operations.map((one, place) => ({
      id: first + place,
      partName: `the ${teeth}`,
      partMark: part.mark,
      title: one.title,
      place,
      minutes: one.minutes,
      done: false,
      doneAt: null,
      struck: false,
      after: one.after.map((key) => id.get(key) ?? Number.NaN),
      heldFor: null,
      needs: one.needs.map((need) => ({ says: needWords(need), metBy: toolsFor(need, toolsOf(shop(now)))[0]?.name ?? null })),
      key: one.key,
    }));
  });
}

/** The id of one operation of the 22 or the 28. */
export function idOf(operations: readonly ShopOperation[], teeth: 22 | 28, key: string): number {
  const found = operations.find((one) => one.partName === `the ${teeth}` && (one as ShopOperation & { key: string }).key === key);
  if (!found) throw new Error(`no ${key}`);
  return found.id;
}
