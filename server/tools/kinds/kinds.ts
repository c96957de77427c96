import { RecordNotFound } from '../../../db/changes.ts';
import { cutterForm } from './cutter.ts';
import { headForm, plateForm } from './dividing.ts';
import { arborForm, chuckForm, mandrelForm, otherForm } from './holding.ts';
import type { Kind, KindForm } from './kind-form.ts';

/** Every kind of tool, in the order of the list: what decides a gear first. */
export const KINDS: readonly KindForm[] = [cutterForm, plateForm, headForm, mandrelForm, arborForm, chuckForm, otherForm];

/** Throws RecordNotFound. */
export function kindOf(text: string | undefined): KindForm {
  const found = KINDS.find(({ kind }) => kind === text);
  if (!found) throw new RecordNotFound('kind of tool', (text ?? '').slice(0, 40));
  return found;
}

export const formOfKind = (kind: Kind): KindForm => kindOf(kind);
