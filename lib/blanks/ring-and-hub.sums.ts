import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure } from '../figure/figure.ts';
import { type ShrinkAsked, type ShrinkFit, shrinkFit } from '../fits/shrink.sums.ts';
import type { Gear, Material } from '../gears/gear.ts';
import { type Length, nanometres } from '../values/length.ts';
import { type BlankSizes, depthTerm, outsideTerm, rootTerm, sizesOf } from './blank-sizes.ts';
import type { Check } from './check.ts';
import { type CleanUp, offHub } from './clean-up.ts';
import { HUB_STEPS, hubChecks, suitedHub } from './hub-checks.ts';
import { CLEAN_UP } from './judgements.data.ts';
import { type OldRoot, oldRoot } from './measured-root.sums.ts';
import { ringUnderTeeth } from './ring-and-hub.formulas.ts';
import type { SpareWheel } from './spare-wheel.ts';
import { join, lengthFigure, one, oneLength, type Term } from './term.ts';

/** hub: turned and measured; until then the diameter that suits is worked out. The rest as in the shrink fit. */
export type RingAsked = {
  readonly wanted: Gear;
  readonly spare: SpareWheel;
  readonly ring: Material;
  readonly hub?: Length;
  readonly cleanUp?: CleanUp;
} & Pick<ShrinkAsked, 'shop' | 'allowancePerInch' | 'strength' | 'ceiling'>;

export type RingVerdict = {
  readonly verdict: 'serves' | 'refused' | 'measure first';
  readonly says: string;
  readonly checks: readonly Check[];
  readonly hub: Length;
  readonly answer: Answer<string>;
};

const SYSTEM =
  'Brown & Sharpe, Practical Treatise on Milling and Milling Machines, rules for spur gears; proportions as named in the system';

function hubTerm(asked: RingAsked, root: OldRoot, sizes: BlankSizes): Term {
  const { wanted } = asked;
  if (asked.hub !== undefined) return { text: '', given: [] };
  const { off, name, from } = offHub(asked.spare, asked.cleanUp);
  const c = oneLength('c', name, off, sizes.unit, from, ...(from === 'guess' ? ['judgement'] : []));
  const s = one('s', 'steps to the unit', { count: HUB_STEPS[sizes.unit] }, 'table', 'judgement');
  const under = join`${rootTerm(wanted, 'new', sizes.unit)} − 2.4 × ${depthTerm(wanted, 'new', sizes.unit)}`;
  return join`floor(min(${root.usableTerm} − ${c}, ${under}) × ${s}) ÷ ${s}`;
}

function ringFigures(asked: RingAsked, root: OldRoot, sizes: BlankSizes, hub: Length): Record<string, Figure> {
  const { unit } = sizes;
  const D = oneLength('D', 'hub diameter', hub, unit, asked.hub === undefined ? 'worked out' : 'measured');
  const newRoot = rootTerm(asked.wanted, 'new', unit);
  const depth = depthTerm(asked.wanted, 'new', unit);
  const under = nanometres(ringUnderTeeth(sizes.root, hub));
  const name = asked.hub === undefined ? 'Turn the hub to' : 'Hub, measured';
  const depths: Figure = {
    name: 'Ring under the teeth, in whole depths',
    symbol: 'q',
    value: { number: ringUnderTeeth(sizes.root, hub) / sizes.depth, unit: 'whole depths', places: 2 },
    unit,
    source: 'derived: difference of the two diameters',
    formula: `(${newRoot.text} − D) ÷ 2 ÷ (${depth.text})`,
    given: join`${newRoot}${depth}${D}`.given,
  };
  return {
    oldRoot: lengthFigure({ name: `Old root, ${root.from}`, symbol: 'Dr', source: SYSTEM }, root.root, unit, root.term),
    hub: lengthFigure({ name, symbol: 'D', source: 'derived: below the old roots, by steps' }, hub, unit, hubTerm(asked, root, sizes)),
    newOutside: lengthFigure(
      { name: 'New outside', symbol: 'Dn', source: SYSTEM },
      sizes.outside,
      unit,
      outsideTerm(asked.wanted, 'new', unit),
    ),
    newRoot: lengthFigure({ name: 'New root', symbol: 'R', source: SYSTEM }, sizes.root, unit, newRoot),
    wholeDepth: lengthFigure({ name: 'Whole depth', symbol: 'W', source: SYSTEM }, sizes.depth, unit, depth),
    underTeeth: lengthFigure(
      { name: 'Ring under the teeth', symbol: 'V', source: 'derived: difference of the two diameters' },
      under,
      unit,
      join`(${newRoot} − ${D}) ÷ 2`,
    ),
    underTeethDepths: depths,
  };
}

const LAST: Caution = {
  name: 'Order',
  says: 'Outside, faces and then the teeth are cut after the ring is on.',
  weight: 'note',
  about: 'ringBore',
};

function shrinkOf(asked: RingAsked, sizes: BlankSizes, hub: Length): ShrinkFit {
  const { spare, ring, shop, allowancePerInch, strength, ceiling } = asked;
  return shrinkFit({
    hub,
    hubMeasured: asked.hub !== undefined,
    ringOutside: sizes.root,
    hubBore: spare.gear.bore?.diameter ?? nanometres(0),
    ring,
    hubMaterial: spare.material,
    unit: sizes.unit,
    ...(shop === undefined ? {} : { shop }),
    ...(allowancePerInch === undefined ? {} : { allowancePerInch }),
    ...(strength === undefined ? {} : { strength }),
    ...(ceiling === undefined ? {} : { ceiling }),
  });
}

/** The shrink fit, or the words in which it is refused. */
function tryShrink(asked: RingAsked, sizes: BlankSizes, hub: Length): { fit: ShrinkFit | null; reasons: readonly string[] } {
  try {
    const fit = shrinkOf(asked, sizes, hub);
    return { fit, reasons: fit.reasons };
  } catch (problem) {
    if (!(problem instanceof DomainError)) throw problem;
    return { fit: null, reasons: [problem.message] };
  }
}

function says(checks: readonly Check[], reasons: readonly string[]): { verdict: RingVerdict['verdict']; says: string } {
  const no = checks.filter(({ result }) => result === 'no').map((each) => each.says);
  const unknown = checks.filter(({ result }) => result === 'measure first').map((each) => each.says);
  if (no.length > 0) return { verdict: 'refused', says: `Will not carry a ring. ${no.join(' ')}` };
  if (unknown.length > 0) return { verdict: 'measure first', says: `Not judged yet. ${unknown.join(' ')}` };
  if (reasons.length > 0) return { verdict: 'refused', says: reasons.join(' ') };
  return { verdict: 'serves', says: `Ring and hub. ${checks.find(({ about }) => about === 'outside')?.says ?? ''}` };
}

/** Keeps the middle of a spare and puts a toothed ring on it: hub, ring, shrink fit, each figure with its working. */
export function ringAndHub(asked: RingAsked): RingVerdict {
  const sizes = sizesOf(asked.wanted);
  const cleanUp = asked.cleanUp ?? CLEAN_UP;
  const root = oldRoot(asked.spare, sizes.unit);
  const hub = asked.hub ?? suitedHub(asked.spare, root, sizes, asked.cleanUp);
  const checks = hubChecks(asked.wanted, asked.spare, root, sizes, hub, cleanUp);
  const { fit, reasons } = tryShrink(asked, sizes, hub);
  const verdict = says(checks, reasons);
  const figures = { ...ringFigures(asked, root, sizes, hub), ...fit?.answer.figures };
  const cautions = [...root.cautions, ...(fit?.answer.cautions ?? []), LAST];
  const tables = fit?.answer.tables ?? [];
  return { ...verdict, checks, hub, answer: { figures, cautions, says: verdict.says, tables } };
}
