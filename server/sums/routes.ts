import { RecordNotFound } from '../../db/changes.ts';
import { missingWheels } from '../../db/missing-wheels.ts';
import { remembered } from '../../db/remembered.ts';
import { DomainError } from '../../lib/figure/domain-error.ts';
import type { Answer } from '../../lib/figure/figure.ts';
import { to } from '../addresses.ts';
import { toDxf } from '../drawing/dxf.ts';
import { toSvgFile } from '../drawing/svg.ts';
import { type FormRead, type Problems, readForm } from '../forms/form.ts';
import type { LinkView } from '../page.ts';
import type { PageData } from '../views.ts';
import { type Result, show, type Visit } from '../visit.ts';
import { SUMS, sumByPath } from './contents.ts';
import { type Owner, ownerOf } from './identify-owner.ts';
import { answerJson } from './json.ts';
import type { Sum } from './sum.ts';
import { takesView } from './take-view.ts';
import { contentsView, sumView } from './view-model.ts';

/** The contents page of all sums. */
export const contents = (): Result => show('sums/contents', contentsView(SUMS));

type Worked = {
  readonly answer: Answer | null;
  readonly read: FormRead<Sum['asks']>;
  readonly problems: Problems;
  readonly refusal: DomainError | null;
};

function withoutOwner(sum: Sum, { for: owner, ...query }: Visit['query']): Visit['query'] {
  return sum.take || owner === undefined ? query : { for: owner, ...query };
}

const askedOf = (sum: Sum, query: Visit['query']): Readonly<Record<string, unknown>> =>
  Object.keys(query).length === 0 ? sum.example : query;

/** Reads what was asked and works it; a refusal stands beside the fields that it is about. */
function work(sum: Sum, query: Visit['query']): Worked {
  const read = readForm(askedOf(sum, query), sum.asks, true);
  if (!read.ok) return { answer: null, read, problems: read.problems, refusal: null };
  try {
    return { answer: sum.work(read.value as never), read, problems: {}, refusal: null };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const boxes = error.about.flatMap((name) => sum.about?.[name] ?? (name in sum.asks ? [name] : []));
    const problems = Object.fromEntries(boxes.map((name) => [name, `${error.limit} ${error.tryThis}`]));
    return { answer: null, read, problems, refusal: error };
  }
}

function asJson({ answer, problems, refusal }: Worked): Result {
  if (answer) return { json: answerJson(answer) };
  const said = refusal ? { given: refusal.given, limit: refusal.limit, try: refusal.tryThis } : {};
  return { json: { problems, ...said }, status: 422 };
}

/** The drawing as a file; null, and so the page with its problem, when there is none. */
function asFile(sum: Sum, form: '.dxf' | '.svg', { answer, read }: Worked): Result | null {
  if (!answer || !read.ok) return null;
  const drawing = (form === '.dxf' ? sum.dxf : sum.paper)?.(read.value as never);
  if (!drawing) return null;
  const fileName = `${sum.path}${form}`;
  return form === '.dxf'
    ? { text: toDxf(drawing), type: 'image/vnd.dxf', fileName }
    : { text: toSvgFile(drawing), type: 'image/svg+xml', fileName };
}

function drawn(sum: Sum, read: FormRead<Sum['asks']>) {
  return sum.draw && read.ok ? sum.draw(read.value as never) : null;
}

/** What follows from the boxes alone is worked once; so is what the page says, where no record is asked about. */
const keptWork = remembered<Worked>();
const keptPages = remembered<PageData<'sums/sum'>>();

type AskedBy = { readonly owner: Owner | null; readonly query: Visit['query']; readonly trusted: boolean };

function shown(sum: Sum, { answer, read, problems, refusal }: Worked, { owner, query, trusted }: AskedBy): PageData<'sums/sum'> {
  const takes = owner && trusted && answer && read.ok ? (sum.take?.(read.value as never) ?? []) : [];
  return sumView(sum, {
    answer,
    typed: read.typed,
    problems,
    refusal,
    drawing: answer ? drawn(sum, read) : null,
    isExample: Object.keys(query).length === 0,
    owner,
    takes: owner ? takesView(owner, takes, read.typed) : [],
    more: sum.blankSheet ? [sum.blankSheet(owner, read.typed)] : [],
  });
}

/** To the parts of the missing wheels that an answer waits for; a visitor who may not see the shop is led nowhere. */
async function waitLinks(visit: Visit, sum: Sum, { answer, read }: Worked): Promise<LinkView[]> {
  if (!sum.waits || !answer || !read.ok || !visit.trusted) return [];
  const wheels = await missingWheels(visit.db, sum.waits(read.value as never));
  return wheels.map(({ id, mark, teeth, set_name }) => ({
    says: `The ${teeth} that is missing: ${mark} of ${set_name}`,
    href: to.part(id),
  }));
}

/** One sum, as page or, under `.json`, as JSON, or under `.dxf` or `.svg`, where it offers them, as a drawing to cut from or to print. The bare address shows the worked example. */
export async function oneSum(visit: Visit): Promise<Result> {
  const [, path = '', form] = /^(.*?)(\.json|\.dxf|\.svg)?$/.exec(visit.params['path'] ?? '') ?? [];
  const sum = sumByPath(path);
  if (!sum || (form === '.dxf' && !sum.dxf) || (form === '.svg' && !sum.paper)) throw new RecordNotFound('sum', path);
  const query = withoutOwner(sum, visit.query);
  const asked = `${path} ${JSON.stringify(query)}`;
  const worked = keptWork(asked, () => work(sum, query));
  if (form === '.json') return asJson(worked);
  const file = form === '.dxf' || form === '.svg' ? asFile(sum, form, worked) : null;
  if (file) return file;
  const owner = sum.take ? await ownerOf(visit.db, visit.query['for']) : null;
  const view = owner
    ? shown(sum, worked, { owner, query, trusted: visit.trusted })
    : keptPages(asked, () => shown(sum, worked, { owner, query, trusted: false }));
  const waits = await waitLinks(visit, sum, worked);
  return show('sums/sum', { ...view, links: [...waits, ...view.links] }, worked.answer ? 200 : 422);
}
