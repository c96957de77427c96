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
