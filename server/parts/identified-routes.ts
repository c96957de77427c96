import { RecordChanged } from '../../db/changes.ts';
import { savePart } from '../../db/parts.ts';
import { refreshStaleOfPart } from '../../db/replan.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { takenBoxes } from '../forms/taken.ts';
import { answerTaken, noteReadings } from '../sums/identify-taken.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { found, type PartAsked, twoVersions } from './edit-routes.ts';
import { editPartPage } from './form-view.ts';
import { typedOfPart } from './forms.ts';
import { assemblyOf, readPart } from './read-part.ts';

const wheelAsked = async (visit: Visit): Promise<PartAsked> => ({ ...(await found(visit)), sort: 'wheel' });

/** Takes an answer of “What is this gear?” into the part: its tooth, how it was found, and the readings that it rests on. */
export async function identified(visit: Visit): Promise<Result> {
  const { part, ...asking } = await wheelAsked(visit);
  const { answer, foundBy, readings } = answerTaken(visit);
  const before = typedOfPart(part, asking.unit);
  const hand = typeof visit.body['hand'] === 'string' ? visit.body['hand'] : '';
  const typed = { ...before, ...takenBoxes({ ...answer.boxes, hand }) };
  const read = readPart(typed, 'wheel', asking.belongs, asking.unit);
  if (!read.ok) return show('parts/form', editPartPage(part, sentRev(visit), { ...asking, tried: read }), 422);
  const { name, material, notes, setId, wheel } = read.part;
  try {
    const assembly_id = await assemblyOf(visit.db, part.project_id, read.part);
    await savePart(
      visit.db,
      part.id,
      sentRev(visit),
      { name, material, notes, assembly_id, set_id: setId },
      wheel && { ...wheel, foundBy },
    );
  } catch (error) {
    if (error instanceof RecordChanged) return twoVersions(typed, await wheelAsked(visit));
    throw error;
  }
  await noteReadings(visit.db, { partId: part.id }, readings);
  await refreshStaleOfPart(visit.db, part.id);
  const undo = to.partEdit(part.id, { as: 'wheel', ...takenBoxes(before), saidOfIt: '' });
  return { go: to.part(part.id), saved: `Taken: ${answer.said}.`, act: { says: 'Not so: what stood there before', href: undo } };
}
