import { expect, test } from 'vitest';
import { compared } from '../../../server/sheets/set-up-rows.ts';

const row = (key: string, text: string) => ({ key, name: key, text });

test('what one of the parts does not have is a dash, and nothing that anyone has to find out', () => {
  const { common, differing } = compared([
    [row('speed', '45 rev/min'), row('rough/depth', '0.2426 in')],
    [row('speed', '45 rev/min'), row('faces/faceOff', '0.125 in')],
  ]);
  expect(common).toEqual([row('speed', '45 rev/min')]);
  expect(differing.map(({ cells }) => cells)).toEqual([
    ['0.2426 in', '–'],
    ['–', '0.125 in'],
  ]);
});

test('what both do not know is said by both, and stays as it is said', () =>
  expect(compared([[row('dial', 'dial not known')], [row('dial', 'dial not known')]]).common).toEqual([row('dial', 'dial not known')]));
