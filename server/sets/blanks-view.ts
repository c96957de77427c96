import { remembered } from '../../db/remembered.ts';
import type { BlankChoice, Chosen } from '../../lib/blanks/choice.ts';
import type { CleanUp } from '../../lib/blanks/clean-up.ts';
import { leastSpareTeeth } from '../../lib/blanks/least-teeth.ts';
import { testSpare } from '../../lib/blanks/spare-test.sums.ts';
import { type Judged, judgeSpare } from '../../lib/blanks/spare-test.ts';
import type { SpareWheel, Wanted } from '../../lib/blanks/spare-wheel.ts';
import { blankDrawing } from '../../lib/drawing/blank-drawing.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Figure } from '../../lib/figure/figure.ts';
import { unitOfPitch } from '../../lib/gears/tooth.ts';
import type { Length, LengthUnit } from '../../lib/values/length.ts';
import { type LengthForm, printLength } from '../../lib/values/print.ts';
import { to } from '../addresses.ts';
import { cell, heads, linkCell, stateCell } from '../cells.ts';
import { drawingView } from '../drawing/drawing-view.ts';
import { cautionView, figureView } from '../figures.ts';
import type { DrawingView, FigureView, StateView, TableView } from '../page.ts';
import type { BlankView } from './view-model.ts';

const roundForm = (unit: LengthUnit): LengthForm => ({ unit, places: unit === 'in' ? 3 : 2 });
const size = (length: Length, unit: LengthUnit): string => `${printLength(length, roundForm(unit))} ${unit}`;

/** Drawings and figures of more than these would make a long page; the rest are on the page of each part. */
const MOST_DRAWN = 6;

const WORDS: Readonly<Record<Judged['verdict'], StateView>> = {
  clean: { kind: 'ready', says: 'cleans up' },
  'only just': { kind: 'ready', says: 'only just' },
  'old gaps stay': { kind: 'off', says: 'too small' },
  refused: { kind: 'off', says: 'will not do' },
  'measure first': { kind: 'doubtful', says: 'measure first' },
};

/** A spare held against a wanted wheel, in the trade's short sentence. */
function shortWords({ gear }: SpareWheel, judged: Judged): string {
  const { unit } = judged.sizes;
  const against = judged.checks.filter((check) => check.result === 'no' && check.about !== 'outside');
  const unknown = judged.checks.filter((check) => check.result === 'measure first');
  const others = against.map((check) => check.says);
  if (judged.sizes.outside > judged.oldOutside) return [`${gear.teeth} teeth is smaller than what is wanted.`, ...others].join(' ');
  if (judged.room.gaps > 0)
    return [`${gear.teeth} teeth is too small: the old gaps would stay ${size(judged.room.gaps, unit)} deep.`, ...others].join(' ');
  if (judged.room.left < 0)
    return [`${gear.teeth} teeth is too small to clean up: traces of the old gaps would stay.`, ...others].join(' ');
  if (others.length > 0) return others.join(' ');
  if (unknown.length > 0) return unknown.map((check) => check.says).join(' ');
  const room = `${size(judged.room.left, unit)} a side to spare.`;
  return judged.verdict === 'only just' ? `Only just cleans up: ${room}` : `Cleans up with ${room}`;
}

type Held = { readonly state: StateView; readonly says: string };

/** The same, or its refusal in words where a reading makes no sense. */
function heldAgainst(wanted: Wanted, spare: SpareWheel, cleanUp: CleanUp): Held {
  try {
    const judged = judgeSpare({ wanted: wanted.gear, spare, cleanUp });
    return { state: WORDS[judged.verdict], says: shortWords(spare, judged) };
  } catch (error) {
    if (error instanceof DomainError) return { state: { kind: 'doubtful', says: 'look again' }, says: error.message };
    throw error;
  }
}

/** "…, which takes 27 teeth or more of its pitch": so nobody looks at the smaller ones. */
function heldTitle({ name, gear }: Wanted, cleanUp: CleanUp): string {
  const least = leastSpareTeeth(gear, cleanUp);
  return `Every spare held against ${name}${least === null ? '' : `, which takes ${least} teeth or more of its pitch`}`;
}

export function sparesTable(wanted: Wanted, spares: readonly SpareWheel[], cleanUp: CleanUp): TableView {
  const inOrder = [...spares].sort((a, b) => a.gear.teeth - b.gear.teeth || a.id - b.id);
  return {
    title: heldTitle(wanted, cleanUp),
    heads: heads(['Spare', 'name'], ['Verdict', 'state'], ['Why', 'words']),
    rows: inOrder.map((spare) => {
      const { state, says } = heldAgainst(wanted, spare, cleanUp);
      return { id: `held-${wanted.id}-${spare.id}`, cells: [linkCell(spare.name, to.item(spare.id)), stateCell(state), cell(says)] };
    }),
    empty: 'No spare is in the shop.',
  };
}

const keptDrawings = remembered<DrawingView>();

/** The figures of turning a spare into a wheel, and the drawing of the new one inside the old. prefix: keeps keys apart on a page. */
export function recutOf({ wanted, spare, judged }: Chosen, cleanUp: CleanUp, prefix: string) {
  const { answer } = testSpare({ wanted: wanted.gear, spare, cleanUp });
  const form = roundForm(unitOfPitch(wanted.gear.pitch));
  const proposal = { old: spare.gear, oldRoot: judged.root.root, next: wanted.gear };
  return {
    drawing: keptDrawings(JSON.stringify(proposal), () => drawingView(blankDrawing(proposal, { form }))),
    figures: Object.entries<Figure>(answer.figures as Record<string, Figure>).map(([key, figure]) =>
      figureView(`${prefix}-${key}`, figure),
    ),
    cautions: answer.cautions.map(cautionView),
  };
}

/** elsewhere: whether a spare lies outside the drawer of the set. */
type Shown = {
  readonly choice: BlankChoice | null;
  readonly spares: readonly SpareWheel[];
  readonly cleanUp: CleanUp;
  readonly elsewhere: (id: number) => boolean;
};

const FIRST = ['newOutside', 'oldRoot', 'turnOff', 'wall'];
const isFirst = ({ key }: FigureView): boolean => FIRST.some((name) => key.endsWith(`-${name}`));

const saysOf = ({ spare, judged }: Chosen, elsewhere: Shown['elsewhere']): string =>
  `${shortWords(spare, judged)}${elsewhere(spare.id) ? ` ${spare.name} lies outside the drawer of this set.` : ''}`;

/** The spares that lack only a measurement. */
const toMeasure = (wanted: Wanted, { spares, cleanUp }: Shown): readonly SpareWheel[] =>
  spares.filter((spare) => heldAgainst(wanted, spare, cleanUp).state === WORDS['measure first']);

/** What is said of a wheel that nothing was chosen for. */
function unfilledWords({ gear }: Wanted, measure: readonly SpareWheel[]): { title: string; says: string } {
  const ways = 'Stock, ring and hub, or sending it out: the page of the part holds the ways.';
  if (measure.length === 0) return { title: `${gear.teeth} teeth: no spare serves`, says: ways };
  const names = measure.map(({ name }) => name).join('; ');
  return { title: `${gear.teeth} teeth: measure a spare first`, says: `Large enough, but not yet measured: ${names}. ${ways}` };
}

/** One missing wheel. at: its place among them. */
export function blankView(wanted: Wanted, at: number, shown: Shown): BlankView {
  const { choice, spares, cleanUp, elsewhere } = shown;
  const chosen = choice?.chosen.find((one) => one.wanted.id === wanted.id);
  const drawn = chosen && at < MOST_DRAWN ? recutOf(chosen, cleanUp, `blank-${wanted.id}`) : null;
  const figures = drawn?.figures ?? [];
  return {
    id: `blank-${wanted.id}`,
    ...(chosen
      ? { title: `${wanted.gear.teeth} teeth from ${chosen.spare.gear.teeth}`, says: saysOf(chosen, elsewhere) }
      : unfilledWords(wanted, toMeasure(wanted, shown))),
    drawing: drawn?.drawing ?? null,
    figures: figures.filter(isFirst),
    more: figures.filter((figure) => !isFirst(figure)),
    cautions: (drawn?.cautions ?? []).filter(({ weight }) => weight !== 'note'),
    spares: sparesTable(wanted, spares, cleanUp),
  };
}
