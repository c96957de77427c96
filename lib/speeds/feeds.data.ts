import type { Material } from '../gears/gear.ts';

/** Feeds in inches, with where they were read. rough and finish: of a lathe tool, per turn. gearCutter: of a form cutter, per minute. */
export type FeedRow = {
  readonly material: Material;
  readonly roughInPerRev: number;
  readonly finishInPerRev: number;
  readonly latheSource: string;
  readonly gearCutterInPerMin: number;
  readonly gearCutterSource: string;
};

const SHEET = 'machine tool speeds and feeds (teaching sheet, docslib.org 5103932), "Recommended feeds for lathe", low ends of the ranges';
const MILLS = 'Machine Shop Work (American School), "Cutting Speeds, Part 2", table of carbon-steel mills';
const JUDGEMENT = 'judgement, no source';

/** Low ends on purpose: home-shop machines are light, and a gear cutter that is hurried pulls the blank round. */
export const FEEDS: readonly FeedRow[] = [
  { material: 'steel', roughInPerRev: 0.01, finishInPerRev: 0.003, latheSource: SHEET, gearCutterInPerMin: 0.75, gearCutterSource: MILLS },
  {
    material: 'cast iron',
    roughInPerRev: 0.01,
    finishInPerRev: 0.003,
    latheSource: SHEET,
    gearCutterInPerMin: 1.5,
    gearCutterSource: MILLS,
  },
  { material: 'bronze', roughInPerRev: 0.015, finishInPerRev: 0.003, latheSource: SHEET, gearCutterInPerMin: 1.5, gearCutterSource: MILLS },
  { material: 'brass', roughInPerRev: 0.015, finishInPerRev: 0.003, latheSource: SHEET, gearCutterInPerMin: 2.25, gearCutterSource: MILLS },
  {
    material: 'aluminium',
    roughInPerRev: 0.015,
    finishInPerRev: 0.005,
    latheSource: SHEET,
    gearCutterInPerMin: 2.25,
    gearCutterSource: JUDGEMENT,
  },
  {
    material: 'phenolic',
    roughInPerRev: 0.01,
    finishInPerRev: 0.005,
    latheSource: JUDGEMENT,
    gearCutterInPerMin: 1.5,
    gearCutterSource: JUDGEMENT,
  },
  {
    material: 'zinc',
    roughInPerRev: 0.01,
    finishInPerRev: 0.005,
    latheSource: JUDGEMENT,
    gearCutterInPerMin: 1.5,
    gearCutterSource: JUDGEMENT,
  },
  {
    material: 'unknown',
    roughInPerRev: 0.01,
    finishInPerRev: 0.003,
    latheSource: JUDGEMENT,
    gearCutterInPerMin: 0.5,
    gearCutterSource: JUDGEMENT,
  },
];
