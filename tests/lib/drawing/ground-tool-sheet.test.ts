import { describe, expect, it } from 'vitest';
import type { GearToCut } from '../../../lib/cutters/choice.ts';
import { GROUND_FOR, type GroundFor, ordinates } from '../../../lib/cutters/ground-space.ts';
import { groundEdge } from '../../../lib/cutters/ground-tool.sums.ts';
import type { Drawing, Mark } from '../../../lib/drawing/drawing.ts';
import { groundToolSheet, SHEET_SCALES } from '../../../lib/drawing/ground-tool-sheet.ts';
import { widthOfText } from '../../../lib/drawing/lettering.ts';
import type { ToolDrawn } from '../../../lib/drawing/space-profile-drawing.ts';
import { degrees } from '../../../lib/values/angle.ts';
import { inches } from '../../../lib/values/length.ts';
import { toSvgFile } from '../../../server/drawing/svg.ts';

const gear = (teeth: number, pitch: number): GearToCut => ({
  teeth,
  pitch: { kind: 'DP', size: [pitch * 10, 10] },
  system: { name: 'test', angle: degrees(20), addendum: 1, dedendum: 1.25, extra: inches(0) },
  helix: null,
});
function tool(teeth: number, pitch: number, kind: GroundFor, times: number, many: number): ToolDrawn {
  const { tooth, tool } = groundEdge({ gear: gear(teeth, pitch), kind, fillet: null, step: inches(0.01) });
  return { edge: tool.edge, rows: ordinates(tooth, tool, (tooth.A + tooth.B) / many), unit: 'in', says: `Tool for ${teeth} teeth`, times };
}
const words = ({ marks }: Drawing): readonly Extract<Mark, { draw: 'text' }>[] =>
  marks.flatMap((mark) => (mark.draw === 'text' ? [mark] : []));

/** Furthest that a mark reaches, letters with their width. */
function box(mark: Mark): readonly (readonly [number, number])[] {
  if (mark.draw === 'text') {
    const wide = widthOfText(mark.says, mark.size);
    const left = mark.anchor === 'end' ? -wide : mark.anchor === 'middle' ? -wide / 2 : 0;
    return [
      [mark.at[0] + left, mark.at[1]],
      [mark.at[0] + left + wide, mark.at[1] + mark.size],
    ];
  }
  if (mark.draw === 'line' || mark.draw === 'dimension') return [mark.from, mark.to];
  return mark.draw === 'outline' ? mark.points : [];
}

const TOOLS = GROUND_FOR.flatMap((kind) =>
  [2.5, 8, 20].flatMap((pitch) => [1, 10, 20].flatMap((times) => [8, 119].map((many) => [kind, pitch, times, many] as const))),
);

describe('the sheet of a ground tool', () => {
  it.each(TOOLS)(
    '%s of %s DP asked for %s times, in %s steps: all of it lies on the sheet, at a scale that it says',
    (kind, pitch, times, many) => {
      const asked = tool(60, pitch, kind, times, many);
      const sheet = groundToolSheet(asked);
      expect(sheet).not.toBeNull();
      if (!sheet) return;
      for (const [x, y] of sheet.marks.flatMap(box)) {
        expect(x).toBeGreaterThanOrEqual(sheet.low[0] - 1e-6);
        expect(x).toBeLessThanOrEqual(sheet.high[0] + 1e-6);
        expect(y).toBeGreaterThanOrEqual(sheet.low[1] - 1e-6);
        expect(y).toBeLessThanOrEqual(sheet.high[1] + 1e-6);
      }
      const said = Number(
        /Scale (\d+) : 1/.exec(
          words(sheet)
            .map(({ says }) => says)
            .join(' '),
        )?.[1],
      );
      expect(SHEET_SCALES).toContain(said);
      expect(said).toBeLessThanOrEqual(times);
      const outline = sheet.marks.find((mark) => mark.draw === 'outline');
      const depth = outline?.draw === 'outline' ? -Math.min(...outline.points.map(([, y]) => y)) : 0;
      expect(depth).toBeCloseTo((asked.edge.at(-1)?.[1] ?? 0) * 25.4 * said, 6);
      if (said < times) expect(words(sheet).some(({ says }) => says.includes(`${times} : 1 does not fit`))).toBe(true);
    },
  );

  it('lists every width as coordinates, in order, none on top of another', () => {
    const asked = tool(22, 8, 'wheel', 10, 28);
    const sheet = groundToolSheet(asked);
    const cells = sheet ? words(sheet).filter(({ says }) => /^\d\.\d{4}$/.test(says)) : [];
    expect(cells).toHaveLength(asked.rows.length * 3);
    expect(new Set(cells.map(({ at }) => at.map((x) => x.toFixed(3)).join())).size).toBe(cells.length);
    const [y, half, whole] = cells.slice(30, 33).map(({ says }) => Number(says));
    expect(y).toBeCloseTo(asked.rows[10]?.[1] ?? 0, 4);
    expect(half).toBeCloseTo(asked.rows[10]?.[0] ?? 0, 4);
    expect(Math.abs((whole ?? 0) - 2 * (half ?? 0))).toBeLessThanOrEqual(0.00011);
  });

  it('is Letter’s and A4’s common size once the check line stands under it', () => {
    const sheet = groundToolSheet(tool(22, 8, 'wheel', 10, 28));
    const svg = sheet ? toSvgFile(sheet) : '';
    expect(svg).toContain('width="190mm" height="255mm"');
    expect(svg).toContain('viewBox="-95 ');
    expect(svg).toContain('2\u2009in');
    expect(svg).toContain('50\u2009mm');
  });

  it('is not drawn smaller than the tool: one too large for a sheet has none', () => {
    expect(groundToolSheet(tool(30, 0.3, 'rack', 1, 20))).toBeNull();
  });
});
