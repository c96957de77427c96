import { fieldGroup } from '../forms/field-view.ts';
import type { Fields, Problems, Typed } from '../forms/form.ts';
import { formMark } from '../once.ts';
import type { ButtonView, FigureView, HiddenView, LinkView, PageHead } from '../page.ts';
import type { PageData } from '../views.ts';

export type Tried = { readonly typed: Typed; readonly problems: Problems };

type Asking = {
  readonly head: PageHead;
  readonly says?: string;
  readonly figures?: readonly FigureView[];
  readonly action: string;
  readonly act: string;
  readonly kind?: 'main' | 'stop';
  readonly fields: Fields;
  readonly tried: Tried;
  readonly hidden?: readonly HiddenView[];
  readonly back: LinkView | null;
  readonly buttons?: readonly ButtonView[];
};

/** A page that is one form about an operation or a routing. */
export const formPage = (asking: Asking): PageData<'routings/form'> => ({
  ...asking.head,
  says: asking.says ?? '',
  figures: asking.figures ?? [],
  form: {
    id: 'form',
    action: asking.action,
    method: 'post',
    hidden: [...(asking.hidden ?? []), formMark()],
    problem: asking.tried.problems[''] ?? '',
    groups: Object.keys(asking.fields).length === 0 ? [] : [fieldGroup('', asking.fields, asking.tried.typed, asking.tried.problems)],
    act: asking.act,
    kind: asking.kind ?? 'main',
    confirm: '',
    back: asking.back,
  },
  buttons: asking.buttons ?? [],
});
