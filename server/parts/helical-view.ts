import { remembered } from '../../db/remembered.ts';
import type { Answer, Caution } from '../../lib/figure/figure.ts';
import type { Gear } from '../../lib/gears/gear.ts';
import { parallelOf } from '../../lib/gears/parallel.ts';
import { pinsAnswer } from '../../lib/gears/pins.sums.ts';
import { leaningSizes } from '../../lib/gears/wheel-sizes.sums.ts';
import { helicalAnswer } from '../../lib/leads/helical.sums.ts';
import type { ShopNow } from '../../lib/routing/shop-now.ts';
import { toDegrees } from '../../lib/values/angle.ts';
import { inches } from '../../lib/values/length.ts';
import { printDegrees } from '../../lib/values/print.ts';
import { ratio } from '../../lib/values/ratio.ts';
import { groupOf, only, without } from './figure-group.ts';
import type { FigureGroup } from './view-model.ts';
import { headForLead, helicalLinks, USUAL_TABLE_SCREW } from './wheel-links.ts';

export type Leaning = Gear & { readonly helix: NonNullable<Gear['helix']> };

const SIZES = ['outsideDiameter', 'pitchDiameter', 'rootDiameter', 'wholeDepth', 'lead', 'virtualTeeth'];
const MEASURED = ['span', 'leastFace', 'chordalThickness', 'chordalAddendum'];
/** What is said of the span and of the teeth as they are measured stands where they are measured. */
const aboutMeasuring = ({ about = '' }: Caution): boolean => ['span', 'thickness'].includes(about);

/** Its sizes as they truly are, the pitch square to the teeth; and the rest of them, folded. */
export function helicalSizes(gear: Gear, { heads }: Pick<ShopNow, 'heads'>): FigureGroup[] {
  const sizes = (): Answer => {
    const { figures, cautions } = leaningSizes(gear);
    return { figures, cautions: cautions.filter((one) => !aboutMeasuring(one)) };
  };
  const links = helicalLinks(gear, heads).slice(0, 1);
  return [
    groupOf({ id: 'sizes', title: 'Its sizes', links }, () => only(sizes(), SIZES)),
    groupOf({ id: 'more-sizes', title: 'More of its sizes', folded: true }, () => ({
      ...without(sizes(), [...SIZES, ...MEASURED]),
      cautions: [],
    })),
  ];
}

/** The span over k with whether it can be laid on, the chord square to the teeth, and pins or balls. */
export const helicalMeasuring = (gear: Gear): FigureGroup[] => [
  groupOf({ id: 'measuring', title: 'Measuring the teeth' }, () => {
    const { cautions, ...answer } = leaningSizes(gear);
    return { ...only({ ...answer, cautions }, MEASURED), cautions: cautions.filter(aboutMeasuring) };
  }),
  groupOf({ id: 'pins', title: 'Over pins or balls' }, () =>
    without(pinsAnswer({ gear: parallelOf(gear) }), ['involute', 'pinAngle', 'idealPin']),
  ),
];

const kept = remembered<Answer>();
/** Figures that stand among its sizes already, worked by the same formulas. */
const SAID = ['diameter', 'lead', 'virtual'];

const note = (name: string, says: string): Caution => ({ name, says, weight: 'beware' });

/** What was taken for granted, and what is lacking, before the wheels are put on. */
function lacking({ face, helix }: Leaning, gears: number, head: string): Caution[] {
  return [
    note('Table screw', `Worked for a screw of ${USUAL_TABLE_SCREW}, as most tables have. Another: type it in “Mill its teeth”, below.`),
    ...(gears < 2
      ? [
          note(
            'No wheels',
            `No wheels of ${head} are on record: put them there under Tools, or type them in “Mill its teeth”. The table is swung by the helix angle, ${printDegrees(helix.angle, 2)}°.`,
          ),
        ]
      : []),
    ...(face === null ? [note('Face', 'Nobody has said how wide the wheel is: how far it drifts across the face is not worked out.')] : []),
  ];
}

/** Without a face there is nothing to drift across. */
const faceless = (answer: Answer): Answer => ({ ...without(answer, ['acrossFace']), tables: [] });

/** Lead, wheels between table screw and head out of those of the head, the table's angle and which way. */
export function helicalMilling(gear: Leaning, { heads }: Pick<ShopNow, 'heads'>): FigureGroup {
  const { helix, face } = gear;
  const head = headForLead(heads);
  const asked = {
    gear,
    helix: toDegrees(helix.angle),
    hand: helix.hand,
    face: face ?? inches(1),
    machine: { turns: head.turns, screw: ratio(1, 4), drive: 'worm' },
    wheels: head.gears,
    upTo: 4,
  } as const;
  return groupOf({ id: 'milling', title: 'Milling its teeth', links: helicalLinks(gear, heads).slice(1) }, () => {
    const answer = without(
      kept(JSON.stringify(asked), () => helicalAnswer(asked)),
      SAID,
    );
    const shown = face === null ? faceless(answer) : answer;
    const which = answer.figures['swing']?.note ?? '';
    return {
      ...shown,
      says: `${answer.says ?? ''} ${which}`.trim(),
      cautions: [...lacking(gear, head.gears.length, head.name), ...shown.cautions],
    };
  });
}
