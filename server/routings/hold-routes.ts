import { RecordChanged, rowOf } from '../../db/changes.ts';
import { holdFor } from '../../db/operations.ts';
import { sharedSetUps } from '../../db/today.ts';
import { workOperations } from '../../db/work-operations.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import { type Holding, holdingFor } from '../../lib/planning/holding.ts';
import { byId } from '../../lib/planning/order.ts';
import { allBefore } from '../../lib/planning/states.ts';
import type { ShopOperation } from '../../lib/planning/today.ts';
import { to } from '../addresses.ts';
import { sentRev } from '../asked.ts';
import { conflictView } from '../forms/conflict.ts';
import { choiceField, optional } from '../forms/field.ts';
import { readForm, type Typed } from '../forms/form.ts';
import type { ChoiceView, FieldView } from '../page.ts';
import { type Db, type Result, show, type Visit } from '../visit.ts';
import { formPage, type Tried } from './form-page.ts';
import { revOf } from './operation-view.ts';
import { ratiosWith } from './ratios.ts';
import { openWritten, operationHead, type WrittenOperation } from './work.ts';

type Candidate = { readonly other: ShopOperation; readonly holding: Holding };

const MOST_NEAR = 8;
const MOST_FAR = 200;
const MOST_SET_UPS = 50;

/** What holding this one for another would cost; null where that other waits for this one. */
function tryHolding(holding: ReturnType<typeof holdingFor>, other: ShopOperation): Holding | null {
  try {
    return holding(other.id);
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}

/** Which operations share the set-up of this one. */
async function sharing(db: Db, setUpId: number): Promise<ReadonlySet<number>> {
  const shared = (await sharedSetUps(db, MOST_SET_UPS)).find((one) => one.setUpId === setUpId);
  return new Set(shared?.work.map((line) => line.operation_id) ?? []);
}

/** Operations that this one could be kept back for. near: of the same set-up, with what it costs, the same operation of another part first. */
type Choices = { readonly near: readonly Candidate[]; readonly far: readonly ShopOperation[] };

async function choicesFor(db: Db, { line, part }: WrittenOperation): Promise<Choices> {
  const [all, shared, ratios] = [await workOperations(db), await sharing(db, line.set_up_id), await ratiosWith(db, part)];
  const others = all.filter((one) => !one.done && !one.struck && one.partMark !== part.mark);
  const alike = (one: (typeof all)[number]): number => Number(one.key !== null && one.key === line.key);
  const delays = holdingFor({ hold: line.id, operations: all, ratios });
  const near: Candidate[] = [];
  for (const other of others.filter(({ id }) => shared.has(id)).sort((a, b) => alike(b) - alike(a))) {
    const holding = tryHolding(delays, other);
    if (holding) near.push({ other, holding });
    if (near.length === MOST_NEAR) break;
  }
  const known = byId(all);
  const waiting = (id: number): boolean => allBefore(id, known).has(line.id);
  const far = others.filter(({ id }) => !near.some(({ other }) => other.id === id) && !waiting(id)).slice(0, MOST_FAR);
  return { near, far };
}

const choiceOf = ({ id, partMark, title }: ShopOperation): readonly [string, string] => [String(id), `${partMark}: ${title}`];

const LET_GO: readonly [string, string] = ['none', 'Do not hold it'];

const heldFields = ({ near, far }: Choices, nowHeld: readonly [string, string] | null) => ({
  held_for: choiceField({
    label: 'Hold it for',
    choices: [LET_GO, ...(nowHeld ? [nowHeld] : []), ...near.map(({ other }) => choiceOf(other))],
  }),
  other: optional(choiceField({ label: 'Or for another operation', choices: far.map(choiceOf) })),
});

/** The operation that it is held for, where it is not among the near ones. */
async function heldNow(db: Db, { line }: WrittenOperation, { near }: Choices): Promise<readonly [string, string] | null> {
  if (line.held_for_id === null || near.some(({ other }) => other.id === line.held_for_id)) return null;
  return [String(line.held_for_id), (await rowOf(db, 'operation', line.held_for_id)).title];
}

const costWords = ({ holding }: Candidate): string => `Does it delay anything? ${holding.why} ${holding.choices.hold}`;

/** Operations of one part mostly cost the same: it is said at the first of them, and not again. */
function hintOf({ near }: Choices, value: string): string {
  const at = near.findIndex(({ other }) => String(other.id) === value);
  const [one, before] = [near[at], near.slice(0, Math.max(0, at))];
  return one && !before.some((other) => costWords(other) === costWords(one)) ? costWords(one) : '';
}

/** What came of it: an operation that was never held is not let go of. */
function savedWords(before: number | null, after: number | null): string {
  if (after !== null) return 'Held.';
  return before === null ? 'It was not held, and is not now.' : 'It is held no longer.';
}

function pageOf(work: WrittenOperation, found: Choices, fields: ReturnType<typeof heldFields>, tried: Tried, rev: number) {
  const page = formPage({
    head: operationHead(work, 'Hold for another operation'),
    says: found.near[0]?.holding.choices.now ?? '',
    action: to.operationHold(work.line.id),
    act: 'Save',
    fields,
    tried,
    hidden: [{ name: 'rev', value: String(rev) }],
    back: { says: 'Back', href: to.operation(work.line.id) },
  });
  const hinted = (choice: ChoiceView): ChoiceView => ({ ...choice, hint: hintOf(found, choice.value) });
  const asRows = (field: FieldView): FieldView =>
    field.name === 'held_for' ? { ...field, kind: 'rows', choices: field.choices.map(hinted) } : { ...field, kind: 'list' };
  const groups = page.form.groups.map((group) => ({ ...group, fields: group.fields.map(asRows) }));
  return { ...page, form: { ...page.form, groups } };
}

async function asked(visit: Visit) {
  const work = await openWritten(visit);
  const found = await choicesFor(visit.db, work);
  return { work, found, fields: heldFields(found, await heldNow(visit.db, work, found)) };
}

const typedNow = ({ line }: WrittenOperation): Typed => ({
  held_for: line.held_for_id === null ? LET_GO[0] : String(line.held_for_id),
  other: '',
});

export async function askHold(visit: Visit): Promise<Result> {
  const { work, found, fields } = await asked(visit);
  return show('routings/form', pageOf(work, found, fields, { typed: typedNow(work), problems: {} }, work.line.rev));
}

export async function hold(visit: Visit): Promise<Result> {
  const { work, found, fields } = await asked(visit);
  const read = readForm(visit.body, fields);
  if (!read.ok) return show('routings/form', pageOf(work, found, fields, read, sentRev(visit)), 422);
  const chosen = read.value.other ?? read.value.held_for;
  const other = chosen === LET_GO[0] ? null : Number(chosen);
  const { line } = work;
  try {
    await holdFor(visit.db, line.id, sentRev(visit), other);
  } catch (error) {
    if (!(error instanceof RecordChanged)) throw error;
    const [back, action] = [{ says: line.title, href: to.operation(line.id) }, to.operationHold(line.id)];
    const two = { what: line.title, place: 'Machines' as const, back, action, fields, yours: read.typed, theirs: typedNow(work) };
    return show('conflict', conflictView({ ...two, hidden: [revOf(line)] }), 409);
  }
  return { go: to.operation(line.id), saved: savedWords(line.held_for_id, other) };
}
