import { readDrawer } from '../../lib/blanks/read-drawer.ts';
import { read, unread } from '../../lib/values/read.ts';
import { type Field, readField } from './field.ts';

/** Wheels in one line, as people write them: 19x2, 22, 25-31 odd. An empty box is none. */
export const wheelsField = (label: string, hint: string): Field<readonly number[]> => ({
  ...readField({
    label,
    hint,
    read: (text) => {
      const { counts, problems } = readDrawer(text);
      return problems.length > 0 ? unread(problems.slice(0, 5).join(' ')) : read(counts);
    },
  }),
  optional: true,
});
