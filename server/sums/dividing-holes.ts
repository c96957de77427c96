import { type HoleCircle, type HoleCirclesAsked, holeCircles, placedHoles } from '../../lib/dividing/hole-circles.sums.ts';
import { holeCirclesDrawing } from '../../lib/drawing/hole-circles-drawing.ts';
import { inches, toMm } from '../../lib/values/length.ts';
import { quoted, type Read, read, readCount, readLength, unread } from '../../lib/values/read.ts';
import { angleField, readField } from '../forms/field.ts';
import type { ValuesOf } from '../forms/form.ts';
import { readList, size, sizeIfKnown, unitOf } from './asks.ts';
import { sum } from './sum.ts';

/** "21 on 2.25": holes, and the diameter through their middles. */
function readHoleCircle(text: string): Read<HoleCircle> {
  const found = /^(\S+)\s+on\s+(.+)$/i.exec(text.trim());
  if (!found) return unread(`${quoted(text)} could not be read. Type 6 on 4, with semicolons between circles.`);
  const holes = readCount(found[1] ?? '', 'the holes', { least: 1, most: 600 });
  const diameter = readLength(found[2] ?? '', 'the diameter', 'in', { least: 0.05, most: 100 });
  if (!holes.ok) return holes;
  return diameter.ok ? read({ holes: holes.value, diameter: diameter.value.length }) : diameter;
}

const asks = {
  holeCircles: readField({
    label: 'Holes on circles',
    hint: 'As 6 on 4; an index plate as 21 on 2.25; 23 on 2.5; 27 on 2.75',
    read: (text) => readList(text, 'the circles', readHoleCircle, /[;\n]/),
  }),
  holeDiameter: size({ label: 'Diameter of a hole', least: 0.005, most: 10 }),
  startAngle: angleField({
    label: 'Angle of hole 1',
    hint: 'From the right, against the clock; 90 is at the top',
    limits: { least: 0, most: 360 },
  }),
  middleX: sizeIfKnown({ label: 'Middle, x', hint: 'Empty: 0', least: -100 }),
  middleY: sizeIfKnown({ label: 'Middle, y', hint: 'Empty: 0', least: -100 }),
};

const askedOf = ({ holeCircles: circles, holeDiameter, startAngle, middleX, middleY }: ValuesOf<typeof asks>): HoleCirclesAsked => ({
  circles,
  hole: holeDiameter.length,
  start: startAngle,
  middle: [middleX?.length ?? inches(0), middleY?.length ?? inches(0)],
  unit: unitOf(holeDiameter),
});

function draw(given: ValuesOf<typeof asks>, lettered: boolean) {
  const asked = askedOf(given);
  const placed = placedHoles(asked);
  const circles = asked.circles.map(({ diameter }, at) => ({
    diameter: toMm(diameter),
    holes: placed.filter(({ circle }) => circle === at).map(({ at: [x, y] }) => [toMm(x), toMm(y)] as const),
  }));
  const middle = [toMm(asked.middle[0]), toMm(asked.middle[1])] as const;
  return holeCirclesDrawing({ title: 'Holes on circles', circles, hole: toMm(asked.hole), middle }, { lettered });
}

const holesSum = sum({
  path: 'hole-circles',
  title: 'Holes on circles, by coordinates',
  group: 'Dividing',
  tells: 'Coordinates for drilling a bolt circle or an index plate, as a table and as a DXF, with the metal left between holes.',
  asks,
  example: { holeCircles: '21 on 2.25; 23 on 2.5; 27 on 2.75; 29 on 3', holeDiameter: '0.125', startAngle: '90', middleX: '', middleY: '' },
  about: { circles: ['holeCircles'] },
  work: (given) => holeCircles(askedOf(given)),
  draw: (given) => draw(given, true),
  dxf: (given) => draw(given, false),
});

export const HOLE_SUMS = [holesSum];
