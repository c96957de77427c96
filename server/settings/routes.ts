import { refreshAllStale } from '../../db/replan.ts';
import { setSetting } from '../../db/settings.ts';
import { to } from '../addresses.ts';
import { readForm } from '../forms/form.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { ownDefaults, typedDefaults } from './defaults.ts';
import { settingFields } from './forms.ts';
import { defaultsView, settingsConflict, stoodWords } from './view-model.ts';

/** The owner's defaults, each with its ground. */
export async function defaults({ db, trusted }: Visit): Promise<Result> {
  const [own, stands] = [await ownDefaults(db), await typedDefaults(db)];
  return show('settings/defaults', defaultsView({ stands, own, typed: stands, problems: {}, stood: stoodWords(stands), trusted }));
}

export async function save({ db, body, trusted }: Visit): Promise<Result> {
  const [own, stands] = [await ownDefaults(db), await typedDefaults(db)];
  const stood = typeof body['stood'] === 'string' ? body['stood'] : '';
  const read = readForm(body, settingFields);
  if (!read.ok)
    return show('settings/defaults', defaultsView({ stands, own, typed: read.typed, problems: read.problems, stood, trusted }), 422);
  if (stood !== stoodWords(stands)) return show('conflict', settingsConflict(stands, read.typed), 409);
  for (const [name, text] of Object.entries(read.typed)) if (text !== stands[name]) await setSetting(db, name, text.trim());
  await refreshAllStale(db);
  return { go: to.settings, saved: 'The defaults are saved.' };
}
