import { RecordNotFound } from '../../db/changes.ts';
import { type ItemLine, item } from '../../db/items.ts';
import { type PartLine, part } from '../../db/parts.ts';
import { wheelName } from '../../db/spares/spare-of.ts';
import { to } from '../addresses.ts';
import type { LinkView } from '../page.ts';
import type { Db } from '../visit.ts';
import type { OwnerName } from './identify-link.ts';

/** The part or thing that was asked about. rev: what an answer taken into it starts from. */
export type Owner = {
  readonly name: OwnerName;
  readonly rev: number;
  readonly page: LinkView;
  /** A blank measuring sheet for it. */
  readonly sheet: string;
  /** Where an answer is taken. */
  readonly take: string;
  /** Its form with an answer written in. */
  readonly form: (given: Readonly<Record<string, string>>) => string;
};

const ofPart = ({ id, rev, mark, name }: PartLine): Owner => ({
  name: `part-${id}`,
  rev,
  page: { says: `${mark} ${name}`, href: to.part(id) },
  sheet: to.partMeasuringSheet(id),
  take: to.partIdentified(id),
  form: (given) => to.partEdit(id, { as: 'wheel', ...given }),
});

const ofItem = (line: ItemLine): Owner => ({
  name: `item-${line.id}`,
  rev: line.rev,
  page: { says: wheelName(line), href: to.item(line.id) },
  sheet: to.itemMeasuringSheet(line.id),
  take: to.itemIdentified(line.id),
  form: (given) => to.itemEdit(line.id, given),
});

/** "part-12" or "item-5" as it is on record; null for anything else, and for what is gone from the record. */
export async function ownerOf(db: Db, name: unknown): Promise<Owner | null> {
  const [, kind, digits] = typeof name === 'string' ? (/^(part|item)-(\d{1,9})$/.exec(name) ?? []) : [];
  if (!digits) return null;
  try {
    if (kind === 'part') return ofPart(await part(db, Number(digits)));
    const line = await item(db, Number(digits));
    return line.kind === 'wheel' ? ofItem(line) : null;
  } catch (error) {
    if (error instanceof RecordNotFound) return null;
    throw error;
  }
}
