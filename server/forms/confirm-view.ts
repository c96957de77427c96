import { formMark } from '../once.ts';
import type { LinkView } from '../page.ts';
import type { PageData } from '../views.ts';

/** What is asked once more, and what is sent when the answer is yes. back: where the page came from; keep: the way out beside the button. */
type AskedOnceMore = {
  readonly id: string;
  readonly title: string;
  readonly place: PageData<'confirm'>['place'];
  readonly back: LinkView | null;
  readonly says: string;
  readonly action: string;
  readonly act: string;
  readonly keep: LinkView;
};

/** Asks once more before what cannot be taken back. */
export const confirmView = ({ id, title, place, back, says, action, act, keep }: AskedOnceMore): PageData<'confirm'> => ({
  title,
  place,
  back,
  titleBlock: [],
  says,
  form: { id, action, method: 'post', hidden: [formMark()], problem: '', groups: [], act, kind: 'stop', confirm: '', back: keep },
});
