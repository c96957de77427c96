import { HtmlValidate } from 'html-validate';
import { describe, expect, it } from 'vitest';
import { blankDrawing } from '../../../lib/drawing/blank-drawing.ts';
import type { Drawing, Point } from '../../../lib/drawing/drawing.ts';
import { gearDrawing } from '../../../lib/drawing/gear-drawing.ts';
import { inches } from '../../../lib/values/length.ts';
import { penFor } from '../../../server/drawing/pen.ts';
import { toSvg } from '../../../server/drawing/svg.ts';
import { wheel } from '../../lib/drawing/shop-wheels.ts';

const FORM = { unit: 'in', places: 3 } as const;
const bare: Drawing = {
  title: 'A <b>&"bold" title',
  describes: "It's <script>alert(1)</script>.",
  low: [0, 0],
  high: [100, 50],
  toScale: false,
  marks: [],
};

/** Places of a path of M and l steps, read back by a reader of its own. */
function readBack(d: string): Point[] {
  const places: Point[] = [];
  for (const [, letter, body = ''] of d.matchAll(/([Ml])([^Mlz]*)/g)) {
    const [x = 0, y = 0] = (body.match(/-?(?:\d+\.?\d*|\.\d+)/g) ?? []).map(Number);
    const [px, py] = letter === 'l' ? (places.at(-1) ?? [0, 0]) : [0, 0];
    places.push([px + x, py + y]);
  }
  return places;
}

describe('a drawing as SVG', () => {
  it('escapes every word put into it', () => {
    const svg = toSvg({ ...bare, marks: [{ draw: 'text', at: [1, 1], says: '<img src=x onerror=y>', size: 5, anchor: 'start' }] });
    expect(svg).not.toMatch(/<script|<img|<b>/);
    expect(svg).toContain('<title>A &lt;b&gt;&amp;&quot;bold&quot; title</title>');
    expect(svg).toContain('<desc>It&#39;s &lt;script&gt;');
  });
  it('has neither ids nor style attributes nor anything unprintable, and is sound markup', async () => {
    const drawings = [
      gearDrawing(wheel(22), { form: FORM }),
      blankDrawing({ old: wheel(31), oldRoot: inches(3.5858), next: wheel(22) }, { form: FORM }),
    ];
    const all = drawings
      .flatMap((drawing) => [toSvg(drawing), toSvg(drawing, { toScale: 'paper' }), toSvg(drawing, { widthPx: 1200 })])
      .join('\n');
    expect(all).not.toMatch(/ id=| style=|NaN|undefined|null|Infinity|url\(/);
    const report = await new HtmlValidate({ extends: ['html-validate:standard'] }).validateString(`<figure>${all}</figure>`);
    expect(report.results.flatMap(({ messages }) => messages.map(({ ruleId, message }) => `${ruleId}: ${message}`))).toEqual([]);
  });
  it('turns y downward and loses less than a three-thousandth of the width', () => {
    const points: Point[] = Array.from({ length: 400 }, (_, i) => [50 * Math.sin(i / 7.3) + i / 9, 33 * Math.cos(i / 5.1)]);
    const back = readBack(penFor(100).path(points, true));
    expect(back.length).toBe(points.length);
    for (const [i, [x, y]] of points.entries()) {
      expect(Math.abs((back[i]?.[0] ?? Number.NaN) - x)).toBeLessThan(0.5 * (100 / 3000));
      expect(Math.abs((back[i]?.[1] ?? Number.NaN) + y)).toBeLessThan(0.5 * (100 / 3000));
    }
  });
  it('prints true: millimetres of paper are millimetres of the viewBox, with a line of 2 in and one of 50 mm to measure', () => {
    const svg = toSvg(gearDrawing(wheel(22), { form: FORM, shown: 'paper' }), { toScale: 'paper' });
    const [, wide, high] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
    const box = /viewBox="([^"]+)"/.exec(svg)?.[1]?.split(' ').map(Number) ?? [];
    expect(Number(wide)).toBeCloseTo(box[2] ?? Number.NaN, 1);
    expect(Number(high)).toBeCloseTo(box[3] ?? Number.NaN, 1);
    const flats = [...svg.matchAll(/l(\d[\d.]*) 0(?![.\d])/g)].map(([, x]) => Number(x));
    expect(flats).toEqual(expect.arrayContaining([50.8, 50]));
    expect(svg).toMatch(/>2\u2009in<.*>50\u2009mm</);
    expect(svg).not.toContain('non-scaling-stroke');
  });
  it('puts a line of 1 in / 25 mm under a drawing to scale on a screen, none under one that is not', () => {
    const drawing = gearDrawing(wheel(22), { form: FORM });
    expect(toSvg(drawing)).toContain('1\u2009in / 25\u2009mm');
    expect(toSvg({ ...drawing, toScale: false })).not.toContain('25\u2009mm<');
  });
  it.each([
    ['here', 'k-here" stroke-width="2" vector'],
    ['missing', 'k-missing" stroke-width="2" stroke-dasharray="5 4"'],
    ['spare', 'k-spare" stroke-width="1" vector'],
    ['old outline', 'k-old-outline" stroke-width="1" stroke-dasharray="14 3 4 3 4 3"'],
    ['waits', 'k-waits" stroke-width="2" stroke-dasharray="12 4 4 4"'],
  ] as const)('keeps the line kind %s without any colour', (kind, attributes) => {
    expect(toSvg({ ...bare, marks: [{ draw: 'line', from: [0, 0], to: [9, 9], kind }] })).toContain(attributes);
  });
  it('turns the arrowheads outward when there is no room between them, and reads a steep dimension from the right', () => {
    const dimension = (to: Point) => toSvg({ ...bare, marks: [{ draw: 'dimension', from: [10, 10], to, says: '1', size: 4 }] });
    const across = (svg: string): number => {
      const xs = readBack(/class="k-dimension"[^>]* d="([^"]+)"/.exec(svg)?.[1] ?? '').map(([x]) => x);
      return Math.max(...xs) - Math.min(...xs);
    };
    expect(across(dimension([60, 10]))).toBeCloseTo(50, 1);
    expect(across(dimension([13, 10]))).toBeGreaterThan(9);
    expect(dimension([10, 40])).toContain('rotate(-90 ');
    expect(dimension([10, 40])).not.toContain('rotate(90 ');
  });
});
