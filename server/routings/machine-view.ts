import { machines } from '../../db/machines.ts';
import type { OperationLine } from '../../db/operations.ts';
import type { Figure } from '../../lib/figure/figure.ts';
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

/** What is no longer needed is not shown at all. */
function oneByOne(line: OperationLine, now: PlannedOperation | null): FigureView[] {
  const gone = goneKeys(line, now);
  return figuresShown(line, now).filter(({ key }) => !gone.has(key));
}

/** What is found by measuring is no number to work to: until it is read, the page says to read it, and what it would be by the sum beside. */
function toMeasure(figure: FigureView): FigureView {
  if (figure.mark !== '' || !/, worked out$/.test(figure.name)) return figure;
  return { ...figure, name: figure.name.replace(/, worked out$/, ''), text: 'measure it', unit: '', words: true };
}

const says = (line: OperationLine, figure: FigureView, shown: FigureView): string =>
  [cutNothing(line) || markWords(figure), figure === shown ? '' : `Worked out ${figure.text} ${figure.unit}: not measured.`]
    .filter((part) => part !== '')
    .join(' ');

/** One figure of an operation. step: from 1; beyond the last it is the last. Null when the operation has no figures. */
export async function machinePage(db: Db, work: Work, step: number): Promise<PageData<'routings/at-machine'> | null> {
  const { line, now } = work;
  const machine = (await machines(db)).find((one) => one.machine.id === line.setUp.machineId)?.machine ?? null;
  const unit = dialUnit(line.setUp.place, machine);
  const figures = oneByOne(lineIn(line, unit), plannedIn(now, unit));
  const at = Math.min(Math.max(step, 1), figures.length);
  const found = figures[at - 1];
  if (!found) return null;
  const figure = toMeasure(found);
  const caution = line.cautions.find(({ weight }) => weight === 'danger') ?? line.cautions[0];
  const view: AtMachineView = {
    step: `${at} of ${figures.length}`,
    name: figure.name,
    text: figure.text,
    unit: figure.unit,
    words: figure.words,
    limits: figure.limits,
    says: says(line, found, figure),
    caution: at === 1 && caution ? cautionView(caution) : null,
    earlier: at > 1 ? { says: 'Back', href: to.atMachine(line.id, at - 1) } : { says: 'Out', href: to.operation(line.id) },
    later:
      at < figures.length
        ? { says: 'Next', href: to.atMachine(line.id, at + 1) }
        : { says: 'Measure, done', href: `${to.operation(line.id)}#measure` },
  };
  return { ...operationHead(work, work.part.mark), at: view };
}
