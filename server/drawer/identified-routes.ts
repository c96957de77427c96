import { RecordChanged, RecordNotFound } from '../../db/changes.ts';
import { saveItem } from '../../db/items.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { takenBoxes } from '../forms/taken.ts';
import { answerTaken, noteReadings } from '../sums/identify-taken.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { typedOfItem } from './forms.ts';
import { askedItem, refreshWork, standing, unitOf } from './item-routes.ts';
import { readThing } from './read-item.ts';
import { editConflict, editView } from './view-model.ts';

/** Takes an answer of “What is this gear?” into a wheel of the drawer: its tooth, how it was found, and the readings that it rests on. Its trust stays. */
export async function identified(visit: Visit): Promise<Result> {
  const line = await askedItem(visit);
  if (line.kind !== 'wheel') throw new RecordNotFound('wheel', line.id);
  const unit = await unitOf(visit.db, line);
  const { answer, foundBy, readings } = answerTaken(visit);
  const before = typedOfItem(line, unit);
  const hand = typeof visit.body['hand'] === 'string' ? visit.body['hand'] : '';
  const typed = { ...before, ...takenBoxes({ ...answer.boxes, hand }) };
  const read = readThing(typed, line.kind, unit, line.hardness);
  if (!read.ok) return show('drawer/form', editView(standing(line, sentRev(visit)), { unit, typed, problems: read.problems }), 422);
  try {
    await saveItem(visit.db, line.id, sentRev(visit), read.columns, read.wheel && { ...read.wheel, foundBy });
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    return show('conflict', editConflict(standing(line), unit, typed, before), 409);
  }
  await noteReadings(visit.db, { itemId: line.id }, readings);
  await refreshWork(visit.db, line.id);
  const undo = to.itemEdit(line.id, { ...takenBoxes(before), saidOfIt: '' });
  return { go: to.item(line.id), saved: `Taken: ${answer.said}.`, act: { says: 'Not so: what stood there before', href: undo } };
}
