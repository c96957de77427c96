import { RecordNotFound } from '../../db/changes.ts';
import { type PartLine, part as partById } from '../../db/parts.ts';
import { addReading, type Reading, readingsOf, strikeReading } from '../../db/readings.ts';
import { to } from '../addresses.ts';
import { readingSentence } from '../drawer/item-readings.ts';
import { readingFields, readingOf, readingProblems } from '../drawer/reading-forms.ts';
import { confirmView } from '../forms/confirm-view.ts';
import { readForm } from '../forms/form.ts';
import { unitSent } from '../forms/gear-form.ts';
import { recordId } from '../record-id.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { page } from './routes.ts';

const askedPart = (visit: Visit): Promise<PartLine> => partById(visit.db, recordId('part', visit.params['id']));

/** Notes what was read on the wheel that somebody holds for this part. */
export async function addOne(visit: Visit): Promise<Result> {
  const { id } = await askedPart(visit);
  const read = readForm(visit.body, readingFields(unitSent(visit.body)));
  const problems = read.ok ? readingProblems(read.value) : read.problems;
  if (!read.ok || Object.keys(problems).length > 0) return page(visit, id, { reading: { typed: read.typed, problems } });
  await addReading(visit.db, { partId: id }, readingOf(read.value));
  return { go: `${to.part(id)}#readings`, saved: 'The reading is written down.' };
}

async function askedReading(visit: Visit, { id: partId }: PartLine): Promise<Reading> {
  const id = recordId('reading', visit.params['reading']);
  const found = (await readingsOf(visit.db, { partId })).find((reading) => reading.id === id);
  if (!found) throw new RecordNotFound('reading', id);
  return found;
}

/** Asks before a reading is struck. */
export async function askStrike(visit: Visit): Promise<Result> {
  const one = await askedPart(visit);
  const reading = await askedReading(visit, one);
  const back = { says: one.name, href: to.part(one.id) };
  const view = confirmView({
    id: 'strike',
    title: 'Strike this reading?',
    place: 'Machines',
    back,
    says: `${readingSentence(reading)} Struck, it is gone for good.`,
    action: to.partReadingStrike(one.id, reading.id),
    act: 'Strike it',
    keep: { says: 'Leave it', href: to.part(one.id) },
  });
  return show('confirm', view);
}

export async function strike(visit: Visit): Promise<Result> {
  const one = await askedPart(visit);
  const reading = await askedReading(visit, one);
  await strikeReading(visit.db, reading.id);
  return { go: `${to.part(one.id)}#readings`, saved: `Struck: ${readingSentence(reading)}` };
}
