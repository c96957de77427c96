import { RecordNotFound } from '../../db/changes.ts';
import { item } from '../../db/items.ts';
import { part } from '../../db/parts.ts';
import { wheelName } from '../../db/spares/spare-of.ts';
import { to } from '../addresses.ts';
import { recordId } from '../record-id.ts';
import { printedBy } from '../sheets/paper.ts';
import { paper, type Result, type Visit } from '../visit.ts';
import { measuringSheet, type SheetFor } from './measuring-sheet-view.ts';

const printed = (visit: Visit, of: SheetFor): Result => paper('sums/measuring-sheet', measuringSheet(of, printedBy(visit)));

/** For the wheel of a part: its mark and QR code bring the readings back to it. */
export async function ofPart(visit: Visit): Promise<Result> {
  const { id, mark, name, stored, unknown } = await part(visit.db, recordId('part', visit.params['id']));
  const wheel = stored ?? unknown;
  if (!wheel) throw new RecordNotFound('wheel of part', id);
  return printed(visit, { teeth: wheel.gear.teeth, what: name, mark, leadsTo: to.part(id), back: { says: mark, href: to.part(id) } });
}

/** The same for a wheel of the drawer. */
export async function ofItem(visit: Visit): Promise<Result> {
  const line = await item(visit.db, recordId('thing', visit.params['id']));
  const wheel = line.stored ?? line.unknown;
  if (!wheel) throw new RecordNotFound('wheel', line.id);
  const what = wheelName(line);
  const href = to.item(line.id);
  return printed(visit, { teeth: wheel.gear.teeth, what, mark: `No. ${line.id}`, leadsTo: href, back: { says: what, href } });
}

/** For any wheel, without a machine of this shop. A count that makes no sense is left to be counted. */
export function blank(visit: Visit): Result {
  const asked = visit.query['teeth'];
  const teeth = typeof asked === 'string' && /^\d{1,4}$/.test(asked) ? Number(asked) : 0;
  const back = { says: 'What is this gear?', href: to.sum('unknown-gear') };
  return printed(visit, { teeth: teeth >= 4 && teeth <= 1000 ? teeth : null, what: '', mark: '', leadsTo: '', back });
}
