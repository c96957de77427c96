import { DxfWriter, point2d, point3d, Units } from '@tarikjabiri/dxf';
import type { Drawing, LineKind, Mark, Point } from '../../lib/drawing/drawing.ts';

const at = ([x, y]: Point) => point3d(x, y);
const layerOf = (kind: LineKind): string => kind.toUpperCase().replaceAll(' ', '-');

/** What a cutting or drilling job takes: lines, circles and outlines. Hatch is for the eye; a dimension keeps its line and its words. */
function write(dxf: DxfWriter, mark: Mark): void {
  if (mark.draw === 'text') dxf.addText(at(mark.at), mark.size, mark.says, { layerName: 'TEXT' });
  if (mark.draw === 'hatch') return;
  if (mark.draw === 'dimension') {
    dxf.addLine(at(mark.from), at(mark.to), { layerName: 'DIMENSION' });
    dxf.addText(at(mark.to), mark.size, mark.says, { layerName: 'TEXT' });
  }
  if (mark.draw === 'line') dxf.addLine(at(mark.from), at(mark.to), { layerName: layerOf(mark.kind) });
  if (mark.draw === 'circle') dxf.addCircle(at(mark.middle), mark.radius, { layerName: layerOf(mark.kind) });
  if (mark.draw === 'outline')
    dxf.addLWPolyline(
      mark.points.map(([x, y]) => ({ point: point2d(x, y) })),
      { layerName: layerOf(mark.kind), flags: mark.closed ? 1 : 0 },
    );
}

const layersOf = (marks: readonly Mark[]): string[] => [
  ...new Set(marks.map((mark) => (mark.draw === 'text' ? 'TEXT' : mark.draw === 'dimension' ? 'DIMENSION' : layerOf(mark.kind)))),
];

const WHITE = 7;

/** A drawing as DXF text, in millimetres at full size: a layer for each kind of line. Only for drawings to scale. */
export function toDxf({ marks, toScale, title }: Drawing): string {
  if (!toScale) throw new TypeError(`“${title}” is not to scale and cannot be cut from`);
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  for (const layer of [...layersOf(marks), 'TEXT', 'DIMENSION'])
    if (!dxf.tables.layerTable.exist(layer)) dxf.addLayer(layer, WHITE, 'Continuous');
  for (const mark of marks) write(dxf, mark);
  return dxf.stringify();
}
