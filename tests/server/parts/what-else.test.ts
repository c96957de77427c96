import { HtmlValidate } from 'html-validate';
import { expect, it } from 'vitest';
import { addPart, part } from '../../../db/parts.ts';
import { addTool } from '../../../db/tools.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { ratio } from '../../../lib/values/ratio.ts';
import { halvorsenWheel, place } from '../../db/bench.ts';
import { rowsOf, textOf } from '../machines/read-page.ts';
import { firstStory, NO_4, TOOL } from '../routings/bench.ts';

const markup = new HtmlValidate({ extends: ['html-validate:recommended'], rules: { 'doctype-style': 'off' } });

// The story of the feed gear of 35 teeth whose cutter is not owned; errors of form derived: true involutes set to the same depth.
it('a wheel’s page says what each cutter in the drawer would do, and every circle that serves', async () => {
  const { db, part22, get } = await firstStory();
  const more = [
    { name: 'No. 2', details: { ...NO_4, number: 'No. 2', teethFrom: 55, teethTo: 134 } },
    { name: 'No. 3, 20°', details: { ...NO_4, number: 'No. 3', teethFrom: 35, teethTo: 54, angle: degrees(20) } },
    { name: 'No. 3, 10 DP', details: { ...NO_4, number: 'No. 3', teethFrom: 35, teethTo: 54, pitch: { kind: 'DP', size: ratio(10) } } },
  ] as const;
  for (const one of more) await addTool(db, { ...TOOL, ...one });
  const { project_id, assembly_id } = await part(db, part22);
  const feed = await addPart(db, place(project_id, assembly_id as number, null, halvorsenWheel(35), 'feed gear'));
  const { body } = await get(`/parts/${feed.id}`);
  const rows = rowsOf(body);
  const cutter = (name: string) => rows.find(([first, right]) => first === name && right !== undefined && /^\d+$/.test(right));
  expect(cutter('No. 4')).toEqual(expect.arrayContaining(['0.0075 in', '0.0028 in', '0.0003 in', '0.0060 in']));
  expect(cutter('No. 2')?.join(' ')).toMatch(/−0\.0077 in −0\.0028 in −0\.0003 in .* Refused\. Leaves the tips full/);
  expect(cutter('No. 3, 20°')?.join(' ')).toMatch(/0\.0122 in 0\.0065 in 0\.0002 in .* Refused\. Wrong pressure angle/);
  expect(cutter('No. 3, 10 DP')?.join(' ')).toContain('Refused. Wrong pitch');
  const text = textOf(body);
  expect(text).toContain('Sources differ on the count that a number is right for');
  expect(text).toMatch(/Borrow a No\. 3½ .*tips \+0\.0036 in if made for 30/);
  const circles = rows.map((row) => row.join(' '));
  expect(circles).toContainEqual(expect.stringContaining('1 turn + 3 spaces on 21'));
  expect(circles).toContainEqual(expect.stringContaining('1 turn + 7 spaces on 49'));
  expect((await markup.validateString(body)).results.flatMap(({ messages }) => messages.map(({ message }) => message))).toEqual([]);
});
