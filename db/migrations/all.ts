import type { Migration } from 'kysely';
import { machinesAndParts } from './0001_machines_and_parts.ts';
import { tooling } from './0002_tooling.ts';
import { routings } from './0003_routings.ts';
import { records } from './0004_records.ts';
import { blankFails } from './0005_blank_fails.ts';
import { notesApart } from './0006_notes_apart.ts';
import { headGears } from './0007_head_gears.ts';
import { chartsAndQuadrants } from './0008_charts_and_quadrants.ts';
import { unknownGears } from './0009_unknown_gears.ts';
import { tableDialsAndLash } from './0010_table_dials_and_lash.ts';

/** In the order of their names. Never edit one that has been released: add another. */
export const migrations: Readonly<Record<string, Migration>> = {
  '0001_machines_and_parts': machinesAndParts,
  '0002_tooling': tooling,
  '0003_routings': routings,
  '0004_records': records,
  '0005_blank_fails': blankFails,
  '0006_notes_apart': notesApart,
  '0007_head_gears': headGears,
  '0008_charts_and_quadrants': chartsAndQuadrants,
  '0009_unknown_gears': unknownGears,
  '0010_table_dials_and_lash': tableDialsAndLash,
};
