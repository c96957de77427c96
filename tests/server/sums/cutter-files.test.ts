import readBack, { type DxfParser, type IEntity } from 'dxf-parser';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnFlank, reachAt } from '../../lib/cutters/drawn-space.ts';
import { shopForTests, type TestShop, visit } from '../app-for-tests.ts';

/** The package is loaded whole as its default; its types name it otherwise. */
const Parser = readBack as unknown as new () => DxfParser;
type Outline = { readonly type: string; readonly vertices: readonly { readonly x: number; readonly y: number }[]; readonly shape: boolean };

let shop: TestShop;
beforeAll(async () => {
  shop = await shopForTests();
});
afterAll(() => shop.close());

const given = { teeth: '22', pitch: '8 DP', system: 'full-14.5', helix: '', kind: 'wheel', fillet: '', step: '0.010', times: '10' };
const address = (form: string, more: Readonly<Record<string, string>> = {}): string =>
  `/sums/ground-tool${form}?${new URLSearchParams({ ...given, ...more })}`;

describe('a tool ground to the space, as DXF', () => {
  it.each(['1', '10'])('reads back true size, whatever the print is drawn at (%s), with the flank of a drawn involute', async (times) => {
    const answer = await visit(shop, address('.dxf', { times }));
    expect(answer.statusCode).toBe(200);
    const dxf = new Parser().parseSync(answer.body);
    const outlines = (dxf?.entities ?? []).filter(({ type }: IEntity) => type === 'LWPOLYLINE') as unknown as Outline[];
    expect(outlines).toHaveLength(1);
    const points = outlines[0]?.vertices ?? [];
    expect(dxf?.header?.['$INSUNITS']).toBe(4);
    // Deepest: from the outside corner of the tooth to the root, 22 teeth: 1.5 cos t − 1.2304 in, t = 0.0955… drawn here by its own route.
    const wheel = { N: 22, m: 25.4 / 8, degrees: 14.5 };
    const flank = drawnFlank(wheel);
    const pitchAt = 1.157 * wheel.m;
    const low = Math.min(...points.map(({ y }) => y));
    expect(-low).toBeGreaterThan(6.6);
    expect(-low).toBeLessThan((2.157 * 25.4) / 8);
    const onFlank = points.filter(({ x, y }) => x > 0 && -y > pitchAt);
    expect(onFlank.length).toBeGreaterThan(50);
    for (const { x, y } of onFlank) expect(Math.abs(x - reachAt(flank, wheel, -y - pitchAt))).toBeLessThan(0.0001);
    expect(Math.max(...points.map(({ x }) => x))).toBeCloseTo(-Math.min(...points.map(({ x }) => x)), 9);
  });

  it('reads back with the flank of a shifted wheel: its base circle and the angle of the space there', async () => {
    const answer = await visit(
      shop,
      address('.dxf', { teeth: '12', pitch: 'module 10', system: 'module-1.25', step: '1 mm', profileShift: '0.3' }),
    );
    const dxf = new Parser().parseSync(answer.body);
    const outline = (dxf?.entities ?? []).find(({ type }: IEntity) => type === 'LWPOLYLINE') as unknown as Outline;
    // 12 teeth, module 10, 20°, shift 0.3: root 50.5 from the middle, base circle 56.3816, the space there turned π/24 − inv 20° − 0.6 tan 20°/12.
    const [root, rb, a] = [50.5, 60 * Math.cos(Math.PI / 9), Math.PI / 9];
    const start = Math.PI / 24 - (Math.tan(a) - a) - (0.6 * Math.tan(a)) / 12;
    const onFlank = outline.vertices.filter(({ x, y }) => x > 0 && Math.hypot(x, root - y) > rb * 1.002);
    expect(onFlank.length).toBeGreaterThan(50);
    for (const { x, y } of onFlank) {
      const [R, at] = [Math.hypot(x, root - y), Math.atan2(x, root - y)];
      const roll = Math.sqrt((R / rb) ** 2 - 1);
      expect(Math.abs(at - (start + roll - Math.atan(roll))) * R).toBeLessThan(0.00001);
    }
  });

  it('reads back for a ring whose tips lie inside its base circle, as deep as the ring is', async () => {
    const ring = { teeth: '40', pitch: 'module 2', system: 'full-14.5', kind: 'ring', step: '0.2 mm' };
    const answer = await visit(shop, address('.dxf', ring));
    expect(answer.statusCode).toBe(200);
    const dxf = new Parser().parseSync(answer.body);
    const outline = (dxf?.entities ?? []).find(({ type }: IEntity) => type === 'LWPOLYLINE') as unknown as Outline;
    const last = outline.vertices.find(({ y }) => y === Math.min(...outline.vertices.map((one) => one.y)));
    // Root of the ring 40 + 2.314, tips 38: the last corner lies on the circle of the tips.
    expect(Math.hypot(last?.x ?? 0, 42.314 + (last?.y ?? 0))).toBeCloseTo(38, 6);
    expect((await visit(shop, address('', ring))).body).toContain('Bore the ring over its tips to 77.452 mm at least');
  });

  it('prints as a sheet of its own on the size that Letter and A4 share, its scale said and its widths as coordinates', async () => {
    for (const times of ['1', '2', '5', '10', '20']) {
      const { body } = await visit(shop, address('.svg', { times, pitch: '5 DP' }));
      expect(body).toContain('width="190mm" height="255mm"');
      expect(body).toMatch(times === '20' ? /Scale 10 : 1 \(20 : 1 does not fit a sheet\)/ : new RegExp(`Scale ${times} : 1, tip up`));
      expect(body.match(/>\d\.\d{4}<\/text>/g)?.length).toBeGreaterThan(90);
      expect(body).toContain('50\u2009mm');
      expect(body).toContain('Tool for a wheel of 22 teeth, 5 DP, 14.5°');
    }
  });

  it('is linked from its page beside the print; nonsense stays on the page', async () => {
    const { body } = await visit(shop, '/sums/ground-tool');
    expect(body).toContain('href="/sums/ground-tool.dxf');
    expect(body).toContain('href="/sums/ground-tool.svg');
    for (const form of ['.dxf', '.svg']) expect((await visit(shop, address(form, { step: 'x' }))).statusCode).toBe(422);
    expect((await visit(shop, '/sums/gear-blank.svg')).statusCode).toBe(404);
  });

  it('refuses a corner that does not fit with what was given, the limit and what to try', async () => {
    const { statusCode, body } = await visit(shop, address('.json', { fillet: '0.2' }));
    const said = JSON.parse(body) as { given: string; limit: string; try: string; problems: object };
    expect(statusCode).toBe(422);
    expect([said.given, said.limit, said.try].every((text) => text.length > 10)).toBe(true);
    expect(Object.keys(said.problems)).toEqual(['fillet']);
  });
});
