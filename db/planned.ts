import { createHash } from 'node:crypto';
import type { PlanAsked, WantedPart } from '../lib/routing/asked.ts';
import { circlesFor } from '../lib/routing/circles-for.ts';
import { type Plan, planRouting } from '../lib/routing/plan.ts';
import type { ShopNow } from '../lib/routing/shop-now.ts';
import { remembered } from './remembered.ts';

/** Says everything that is asked, not by ids but by what stands there: whatever is changed on record asks something else. */
const keyOf = (asked: unknown): string => createHash('sha256').update(JSON.stringify(asked)).digest('base64');

const plans = remembered<Plan>();
const circles = remembered<ReturnType<typeof circlesFor>>();

/** The routing of one gear, worked out once for the same question. Throws DomainError. */
export const planOf = (asked: PlanAsked): Plan => plans(keyOf(asked), () => planRouting(asked));

/** Circles for several parts at once, likewise. */
export const circlesOf = (parts: readonly WantedPart[], shop: ShopNow): ReturnType<typeof circlesFor> =>
  circles(keyOf([parts, shop]), () => circlesFor(parts, shop));
