import { angularIndexing } from '../../lib/dividing/angular.sums.ts';
import { blockIndexing } from '../../lib/dividing/block.sums.ts';
import { scaleGraduating } from '../../lib/dividing/graduating.sums.ts';
import { rackIndexing } from '../../lib/dividing/rack.sums.ts';
import { tableDialDividing } from '../../lib/dividing/table-dial.sums.ts';
import { readPitch } from '../../lib/gears/pitch.ts';
import { type LengthUnit, toInches, toMm } from '../../lib/values/length.ts';
import { type Read, read, readLength, unread } from '../../lib/values/read.ts';
import { angleField, countField, numberField, optional, readField } from '../forms/field.ts';
import { size, unitOf } from './asks.ts';
import { ABOUT, backPinField, divisionsUpTo, headField, pinOf } from './dividing-asks.ts';
import { COMMON_PLATES, platesField } from './read-plates.ts';
import { sum } from './sum.ts';

const angularSum = sum({
  path: 'angular-indexing',
  title: 'Angular indexing',
  group: 'Dividing',
  tells: 'The crank for an angle: exact when a circle gives it exactly, else the nearest with its error.',
  asks: {
    degrees: angleField({ label: 'Angle', hint: 'As 35, 11 1/2 or 48°40′', limits: { least: 0, most: 360 } }),
    turns: headField,
    plates: platesField,
    backPin: backPinField,
  },
  example: { degrees: '48°40′', turns: '40', plates: COMMON_PLATES, backPin: '' },
  about: { ...ABOUT, angle: ['degrees'] },
  work: ({ degrees, turns, plates, backPin }) => angularIndexing({ angle: degrees, turns, plates, ...pinOf(backPin) }),
});

const blockSum = sum({
  path: 'block-indexing',
  title: 'Block indexing',
  group: 'Dividing',
  tells: 'Every so many spaces, round and round, so that the heat of cutting spreads; each space is met once.',
  asks: {
    divisions: divisionsUpTo(500),
    turns: headField,
    plates: platesField,
    passed: optional(countField({ label: 'Spaces passed at each move', hint: 'Empty: one that serves', limits: { least: 2, most: 499 } })),
  },
  example: { divisions: '25', turns: '40', plates: COMMON_PLATES, passed: '4' },
  about: ABOUT,
  work: blockIndexing,
});

const dialSum = sum({
  path: 'table-dial',
  title: 'Rotary table by its dial',
  group: 'Dividing',
  tells: 'Turns and line of the handwheel for every tooth, counted from zero, with the error of each.',
  asks: {
    divisions: divisionsUpTo(500),
    tableTurns: countField({ label: 'Turns of the handwheel for one of the table', limits: { least: 1, most: 1000 }, unit: 'turns' }),
    lines: countField({ label: 'Lines on the dial', hint: 'Once round', limits: { least: 2, most: 1000 }, unit: 'lines' }),
    vernier: countField({ label: 'Parts of the vernier', hint: '1: no vernier', limits: { least: 1, most: 100 } }),
    dialLash: optional(
      numberField({
        label: 'Lash',
        hint: 'Lines that the dial turns before the table moves',
        limits: { least: 0, most: 1000 },
        unit: 'lines',
      }),
    ),
  },
  example: { divisions: '17', tableTurns: '90', lines: '240', vernier: '12', dialLash: '3' },
  about: { head: ['tableTurns'], perTurn: ['lines'] },
  work: ({ divisions, tableTurns, lines, vernier, dialLash }) =>
    tableDialDividing({ divisions, dial: { turns: tableTurns, perTurn: lines, vernier }, lash: dialLash }),
});

type RackPitch = { readonly pitch: number; readonly unit: LengthUnit };

/** A gear's pitch, of which the rack's is π times, or the rack's own as a length. */
function readRackPitch(text: string): Read<RackPitch> {
  const gear = readPitch(text);
  if (gear.ok) {
    const {
      kind,
      size: [num, den],
    } = gear.value;
    if (kind === 'DP') return read({ pitch: (Math.PI * den) / num, unit: 'in' });
    if (kind === 'module') return read({ pitch: (Math.PI * num) / den, unit: 'mm' });
  }
  const length = readLength(text.replace(/\s*CP\s*$/i, ''), 'the pitch', 'in', { least: 0.01, most: 20 });
  if (!length.ok) return unread(`${length.problem} Or type the pitch of its gear, as 8 DP or module 2.`);
  const { unit } = length.value.form;
  return read({ pitch: unit === 'in' ? toInches(length.value.length) : toMm(length.value.length), unit });
}

const rackSum = sum({
  path: 'rack-indexing',
  title: 'Rack by the table screw',
  group: 'Dividing',
  tells: 'Turns and line of the table screw for every tooth of a rack, and how the error would add up if one rounded move were repeated.',
  asks: {
    rackPitch: readField({ label: 'Pitch', hint: 'As 8 DP, module 2, or from tooth to tooth as 0.3927 in', read: readRackPitch }),
    tableLead: size({ label: 'Lead of the table screw', least: 0.01, most: 2 }),
    lines: countField({ label: 'Lines on its dial', limits: { least: 1, most: 1000 }, unit: 'lines' }),
    rackTeeth: countField({ label: 'Teeth', limits: { least: 2, most: 500 } }),
  },
  example: { rackPitch: '8 DP', tableLead: '0.2', lines: '200', rackTeeth: '21' },
  about: { pitch: ['rackPitch'], lead: ['tableLead'], perTurn: ['lines'], teeth: ['rackTeeth'] },
  work: ({ rackPitch, tableLead, lines, rackTeeth }) =>
    rackIndexing({ ...rackPitch, lead: tableLead.length, perTurn: lines, teeth: rackTeeth }),
});

const graduatingSum = sum({
  path: 'scale-graduating',
  title: 'Graduating a scale',
  group: 'Dividing',
  tells: 'The crank for the lines of a straight scale, the head geared to the table screw.',
  asks: {
    distance: size({ label: 'From line to line', least: 0.001, most: 10 }),
    tableLead: size({ label: 'Lead of the table screw', least: 0.01, most: 2 }),
    turns: headField,
    onSpindle: countField({ label: 'Gear on the spindle', limits: { least: 10, most: 200 }, unit: 'teeth' }),
    onScrew: countField({ label: 'Gear on the screw', limits: { least: 10, most: 200 }, unit: 'teeth' }),
    scaleLines: countField({ label: 'Lines in all', limits: { least: 2, most: 500 } }),
    plates: platesField,
  },
  example: { distance: '1/64', tableLead: '0.25', turns: '40', onSpindle: '40', onScrew: '40', scaleLines: '65', plates: COMMON_PLATES },
  about: { ...ABOUT, lead: ['tableLead'], lines: ['scaleLines'] },
  work: ({ distance, tableLead, turns, onSpindle, onScrew, scaleLines, plates }) =>
    scaleGraduating({
      distance: distance.length,
      lead: tableLead.length,
      turns,
      driver: onSpindle,
      driven: onScrew,
      lines: scaleLines,
      plates,
      unit: unitOf(tableLead),
    }),
});

export const OTHER_DIVIDING_SUMS = [angularSum, blockSum, dialSum, rackSum, graduatingSum];
