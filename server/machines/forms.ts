import type { Row } from '../../db/executor.ts';
import { choiceField, noteField, optional, textField } from '../forms/field.ts';
import { required, type Typed } from '../forms/form.ts';

/** A machine under restoration. */
export const machineFields = {
  make: textField({ label: 'Maker', hint: 'As on the casting or the plate' }),
  model: required(
    textField({ label: 'Model', hint: 'Its parts are marked after it: H-12 gives H12-22T' }),
    'the model, as the maker’s plate has it',
  ),
  what: textField({ label: 'What it is', hint: 'For instance gear hobber, lathe, shaper' }),
  size: textField({ label: 'Size', hint: 'As it is spoken of: 16 in, 6 × 24' }),
  year: textField({ label: 'Year, as known', hint: 'For instance 1923, or about 1910, or before the war' }),
  serial: textField({ label: 'Serial number' }),
  notes: noteField({ label: 'Notes' }),
};

export const typedOfMachine = (row: Row<'project'>): Typed => ({
  make: row.make,
  model: row.model,
  what: row.what,
  size: row.size,
  year: row.year,
  serial: row.serial,
  notes: row.notes,
});

/** "Bed › Change gears", from the outermost in. A loop, which no form makes, ends the walk. */
export function assemblyPath(all: readonly Row<'assembly'>[], id: number): string {
  const names: string[] = [];
  const seen = new Set<number>();
  for (let at: number | null = id; at !== null && !seen.has(at); ) {
    const row: Row<'assembly'> | undefined = all.find((one) => one.id === at);
    seen.add(at);
    if (row) names.unshift(row.name);
    at = row?.within_id ?? null;
  }
  return names.join(' › ');
}

/** Those that lie, by any way, within this one; it among them. */
function within(all: readonly Row<'assembly'>[], id: number): ReadonlySet<number> {
  const found = new Set([id]);
  for (let before = 0; before !== found.size; ) {
    before = found.size;
    for (const row of all) if (row.within_id !== null && found.has(row.within_id)) found.add(row.id);
  }
  return found;
}

const choicesOf = (all: readonly Row<'assembly'>[]): (readonly [string, string])[] =>
  all.map((row) => [String(row.id), assemblyPath(all, row.id)] as const);

/** Which assembly of a machine something belongs to. */
export const assemblyChoice = (all: readonly Row<'assembly'>[], label = 'Assembly') => choiceField({ label, choices: choicesOf(all) });

/** An assembly of a machine. self: the one being changed, which cannot stand within itself. */
export function assemblyFields(all: readonly Row<'assembly'>[], self: number | null) {
  const inside = self === null ? new Set<number>() : within(all, self);
  return {
    name: required(textField({ label: 'Name', hint: 'For instance headstock, feed box, change gears' }), 'the name of the assembly'),
    within: optional(
      assemblyChoice(
        all.filter((row) => !inside.has(row.id)),
        'Stands within',
      ),
    ),
    serial: textField({ label: 'Serial number', hint: 'If it has one of its own' }),
    notes: noteField({ label: 'Notes' }),
  };
}

export const typedOfAssembly = (row: Row<'assembly'>): Typed => ({
  name: row.name,
  within: row.within_id === null ? '' : String(row.within_id),
  serial: row.serial,
  notes: row.notes,
});
