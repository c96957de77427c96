import { machines } from '../../db/machines.ts';
import type { OperationLine } from '../../db/operations.ts';
import type { Figure } from '../../lib/figure/figure.ts';
import { inOrderOfSetting, isLimit, type Standing } from '../../lib/routing/leads.ts';
import type { PlannedOperation } from '../../lib/routing/operation.ts';
import type { Machine } from '../../lib/tooling/tooling.ts';
import type { LengthUnit } from '../../lib/values/length.ts';
import { to } from '../addresses.ts';
import { cautionView } from '../figures.ts';
import type { AtMachineView, FigureView } from '../page.ts';
import type { PageData } from '../views.ts';
import type { Db } from '../visit.ts';
import { cutNothing } from './blank-words.ts';
import { figuresShown, goneKeys } from './figure-shown.ts';
import { operationHead, type Work } from './work.ts';

/** The unit that the dial at hand reads: of the mill's depth, of the lathe's cross slide. Null where no dial is known. */
function dialUnit(place: string, machine: Machine | null): LengthUnit | null {
  const dial = place === 'mill' ? (machine?.depthDial ?? machine?.crossDial) : (machine?.crossDial ?? machine?.depthDial);
  return dial?.unit ?? null;
}

/** A length in the dial's own unit, alone. */
function inUnit(figure: Figure, unit: LengthUnit | null): Figure {
  if (!unit || figure.unit === unit || !('length' in figure.value)) return figure;
  const { places: _usual, ...rest } = figure;
  return { ...rest, unit };
}

const lineIn = (line: OperationLine, unit: LengthUnit | null): OperationLine => ({
  ...line,
  figures: line.figures.map((stored) => ({ ...stored, figure: inUnit(stored.figure, unit) })),
});

const plannedIn = (now: PlannedOperation | null, unit: LengthUnit | null): PlannedOperation | null =>
  now && { ...now, figures: Object.fromEntries(Object.entries(now.figures).map(([key, figure]) => [key, inUnit(figure, unit)])) };

const markWords = ({ mark, was }: FigureView): string => {
  if (mark) return `As ${mark}.`;
  return was ? `Out of date on the sheet: there it says ${was}.` : '';
};

/** A figure as it stands for the order of setting: stored, or as lib says it today. */
function standingOf({ figures }: OperationLine, now: PlannedOperation | null, { key, mark }: FigureView): Standing {
  const stored = figures.find((one) => one.key === key);
  const planned = now?.figures[key];
  const figure = mark ? stored?.figure : (planned ?? stored?.figure);
  const value = stored && mark ? stored.shown : (figure?.value ?? { words: '' });
  return { key, value, limit: figure !== undefined && mark !== 'measured' && isLimit(figure), measured: mark === 'measured' };
}

/** What is set by hand comes first; what is no longer needed is not shown at all. */
function oneByOne(line: OperationLine, now: PlannedOperation | null): FigureView[] {
  const gone = goneKeys(line, now);
  const figures = figuresShown(line, now).filter(({ key }) => !gone.has(key));
  const order = inOrderOfSetting(
    line.key,
    figures.map((one) => standingOf(line, now, one)),
  );
  return order.flatMap((key) => figures.find((one) => one.key === key) ?? []);
}

/** One figure of an operation. step: from 1; beyond the last it is the last. Null when the operation has no figures. */
export async function machinePage(db: Db, work: Work, step: number): Promise<PageData<'routings/at-machine'> | null> {
  const { line, now } = work;
  const machine = (await machines(db)).find((one) => one.machine.id === line.setUp.machineId)?.machine ?? null;
  const unit = dialUnit(line.setUp.place, machine);
  const figures = oneByOne(lineIn(line, unit), plannedIn(now, unit));
  const at = Math.min(Math.max(step, 1), figures.length);
  const figure = figures[at - 1];
  if (!figure) return null;
  const caution = line.cautions.find(({ weight }) => weight === 'danger') ?? line.cautions[0];
  const view: AtMachineView = {
    step: `${at} of ${figures.length}`,
    name: figure.name,
    text: figure.text,
    unit: figure.unit,
    words: figure.words,
    limits: figure.limits,
    says: cutNothing(line) || markWords(figure),
    caution: at === 1 && caution ? cautionView(caution) : null,
    earlier: at > 1 ? { says: 'Back', href: to.atMachine(line.id, at - 1) } : { says: 'Out', href: to.operation(line.id) },
    later:
      at < figures.length
        ? { says: 'Next', href: to.atMachine(line.id, at + 1) }
        : { says: 'Measure, done', href: `${to.operation(line.id)}#measure` },
  };
  return { ...operationHead(work, work.part.mark), at: view };
}
