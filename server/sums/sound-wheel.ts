import type { DrawerWheel } from '../../lib/blanks/drawer.ts';
import type { Gear } from '../../lib/gears/gear.ts';

/** A wheel of which only the teeth were typed, taken as sound, soft and solid: the test is then of size alone. */
export const soundWheel = (gear: Gear, id: number): DrawerWheel => ({
  id,
  name: `${gear.teeth}T`,
  gear,
  reading: null,
  runOut: null,
  trust: 'unknown',
  condition: { teeth: 'not looked at', bore: 'not looked at' },
  material: 'steel',
  hardness: 'file bites',
  caseDepth: null,
  doubt: null,
});
