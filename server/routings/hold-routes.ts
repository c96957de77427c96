import { RecordChanged } from '../../db/changes.ts';
import { holdFor, operation } from '../../db/operations.ts';
import { sharedSetUps } from '../../db/today.ts';
import { workOperations } from '../../db/work-operations.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { type Holding, holdingDelays } from '../../lib/planning/holding.ts';
import type { ShopOperation } from '../../lib/planning/today.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import { choiceField, optional } from '../forms/field.ts';
import { readForm, type Typed } from '../forms/form.ts';
import type { ChoiceView } from '../page.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';
import { formPage, type Tried } from './form-page.ts';
import { revOf } from './operation-view.ts';
import { ratiosWith } from './ratios.ts';
import { operationHead, operationWork, type Work } from './work.ts';

type Candidate = { readonly other: ShopOperation; readonly holding: Holding };

const MOST = 40;

/** What holding this one for another would cost; null where that other waits for this one. */
function tryHolding(
  hold: number,
  other: ShopOperation,
  operations: readonly ShopOperation[],
  ratios: { today: number; withIt: number } | null,
) {
  try {
    return holdingDelays({ hold, heldFor: other.id, operations, ratios });
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

/** Which operations share the set-up of this one. */
async function sharing(db: Db, setUpId: number): Promise<ReadonlySet<number>> {
  const shared = (await sharedSetUps(db, 50)).find((one) => one.setUpId === setUpId);
  return new Set(shared?.work.map((line) => line.operation_id) ?? []);
}

/** Operations that this one could be kept back for: those of other parts in the same set-up first. */
async function candidates(db: Db, { line, part }: Work): Promise<Candidate[]> {
  const [all, shared, ratios] = [await workOperations(db), await sharing(db, line.set_up_id), await ratiosWith(db, part)];
  const others = all.filter((one) => one.id !== line.id && !one.done && !one.struck && one.partMark !== part.mark);
  const sorted = [...others].sort((a, b) => Number(shared.has(b.id)) - Number(shared.has(a.id)));
  return sorted.slice(0, MOST).flatMap((other) => {
    const holding = tryHolding(line.id, other, all, ratios);
    return holding ? [{ other, holding }] : [];
  });
}

const choiceWords = ({ partMark, title }: ShopOperation): string => `${partMark}: ${title}`;

const heldFields = (found: readonly Candidate[], nowHeld: readonly [string, string] | null) => ({
  held_for: optional(
    choiceField({
      label: 'Hold it for',
      choices: [...(nowHeld ? [nowHeld] : []), ...found.map(({ other }) => [String(other.id), choiceWords(other)] as const)],
    }),
  ),
});

/** The operation that it is held for, where the list of candidates leaves it out. */
async function heldNow(db: Db, { line }: Work, found: readonly Candidate[]): Promise<readonly [string, string] | null> {
  if (line.held_for_id === null || found.some(({ other }) => other.id === line.held_for_id)) return null;
  return [String(line.held_for_id), (await operation(db, line.held_for_id)).title];
}

const hintOf = (found: readonly Candidate[], value: string): string => {
  const one = found.find(({ other }) => String(other.id) === value);
  return one ? `Does it delay anything? ${one.holding.why} ${one.holding.choices.hold}` : '';
};

const LET_GO = 'Do not hold it';

function pageOf(work: Work, found: readonly Candidate[], fields: ReturnType<typeof heldFields>, tried: Tried, rev: number) {
  const page = formPage({
    head: operationHead(work, 'Hold for another operation'),
    says: found[0]?.holding.choices.now ?? 'Nothing else is being made that this could be held for.',
    action: to.operationHold(work.line.id),
    act: 'Save',
    fields,
    tried,
    hidden: [{ name: 'rev', value: String(rev) }],
    back: { says: 'Back', href: to.operation(work.line.id) },
  });
  const hinted = (choice: ChoiceView): ChoiceView =>
    choice.value === '' ? { ...choice, says: LET_GO } : { ...choice, hint: hintOf(found, choice.value) };
  const groups = page.form.groups.map((group) => ({
    ...group,
    fields: group.fields.map((field) => ({ ...field, kind: 'rows' as const, label: 'Hold it for', choices: field.choices.map(hinted) })),
  }));
  return { ...page, form: { ...page.form, groups } };
}

async function asked(visit: Visit) {
  const work = await operationWork(visit);
  const found = await candidates(visit.db, work);
  return { work, found, fields: heldFields(found, await heldNow(visit.db, work, found)) };
}

const typedNow = ({ line }: Work): Typed => ({ held_for: line.held_for_id === null ? '' : String(line.held_for_id) });

export async function askHold(visit: Visit): Promise<Result> {
  const { work, found, fields } = await asked(visit);
  return show('routings/form', pageOf(work, found, fields, { typed: typedNow(work), problems: {} }, work.line.rev));
}

export async function hold(visit: Visit): Promise<Result> {
  const { work, found, fields } = await asked(visit);
  const read = readForm(visit.body, fields);
  if (!read.ok) return show('routings/form', pageOf(work, found, fields, read, sentRev(visit)), 422);
  const other = read.value.held_for === null ? null : Number(read.value.held_for);
  const { line } = work;
  try {
    await holdFor(visit.db, line.id, sentRev(visit), other);
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    const [back, action] = [{ says: line.title, href: to.operation(line.id) }, to.operationHold(line.id)];
    const two = { what: line.title, place: 'Machines' as const, back, action, fields, yours: read.typed, theirs: typedNow(work) };
    return show('conflict', conflictView({ ...two, hidden: [revOf(line)] }), 409);
  }
  return { go: to.operation(line.id), saved: other === null ? 'It is held no longer.' : 'Held.' };
}
