import type { Answer, Caution, Figure, Given, Value } from '../figure/figure.ts';
import type { Wanted } from '../trains/wanted.ts';
import { printNumber, printShort } from '../values/print.ts';
import { type Ratio, ratio, times, toNumber } from '../values/ratio.ts';
import { type Dial, type DialUse, dialUse, driverStep, startPitch, startShift, threadsToMatch } from './thread-dial.formulas.ts';

const TURNING = 'F. D. Jones, Turning and Boring (1914), cutting multiple threads and catching the thread';

export type ScrewCuttingKey = 'lead' | 'match' | 'distance' | 'lines' | 'shift' | 'driver' | 'halfNut';
export type ScrewCuttingAsked = {
  /** One start: its pitch. */
  readonly thread: Wanted;
  readonly starts: number;
  readonly screw: Ratio;
  readonly dial: Dial | null;
  /** Teeth of the first driver, on the spindle. */
  readonly driver: number | null;
};

const figure = (name: string, symbol: string, value: Value, formula = '', given: readonly Given[] = [], source = TURNING): Figure => ({
  name,
  symbol,
  value,
  unit: 'in',
  formula,
  source,
  given,
});
const one = (symbol: string, name: string, value: Value, from: Given['from'] = 'typed'): Given => ({ symbol, name, value, from });

const WORDS = ['', 'first', 'second', 'third'] as const;
/** As 21st, 22nd, 127th. */
function place(count: number): string {
  const end = count % 100 >= 11 && count % 100 <= 13 ? 'th' : (['th', 'st', 'nd', 'rd'][count % 10] ?? 'th');
  return WORDS[count] || `${count}${end}`;
}

/** Counting more lines than this past while the screw turns goes wrong: judgement. */
const MOST_COUNTED = 12;

const lineWords = (use: DialUse, { lines }: Dial): string => {
  if (use.use === 'anywhere') return 'anywhere: the dial is not needed';
  if (use.use === 'count turns' && use.turns > 1 && use.step < lines && use.step <= MOST_COUNTED)
    return `every ${place(use.step)} line as it passes, counted on from the one last closed at; the line started on comes right again after ${use.turns} turns`;
  if (use.use === 'count turns')
    return use.turns === 1 ? 'the line started on, no other' : `the line started on, every ${use.turns} turns of the dial`;
  if (use.lines.length === lines) return 'any line, not between';
  return use.lines.length === 1 ? 'the line started on, no other' : `every ${place(use.step)} line from the one started on`;
};

/**
 * Screw cutting beyond the wheels: where the half-nuts may close, which lines of the dial serve, how to go from start to start.
 * Example: 9 TPI on an 8 TPI screw, dial wheel 16 with 8 lines: after 8 threads, every 4th line.
 */
export function screwCuttingAnswer(asked: ScrewCuttingAsked): Answer<ScrewCuttingKey> {
  const { thread, starts, screw, dial } = asked;
  const L = times(thread.size, ratio(starts));
  if (thread.pi === 1) return neverAgain(asked, L);
  const s = threadsToMatch(screw, L);
  const use = dial ? dialUse(s, dial) : null;
  return {
    figures: {
      lead: leadFigure(asked, L),
      match: figure(
        'Threads of the screw until the tool falls in again',
        's',
        { count: s },
        '',
        [],
        'derived: lead of the screw over lead of the thread in lowest terms',
      ),
      distance: figure('The same as a distance', 'x', { number: s * toNumber(screw), unit: 'in', places: 4 }, 's × S', [
        one('s', 'threads of the screw', { count: s }, 'worked out'),
        one('S', 'lead of the screw', { ratio: screw }),
      ]),
      ...(use && dial ? { lines: figure('Close the half-nuts at', '', { words: lineWords(use, dial) }) } : {}),
      ...(starts > 1 ? startFigures(asked, L) : {}),
    } as Answer<ScrewCuttingKey>['figures'],
    cautions: cautionsFor(s, use, screw),
    says:
      s === 1
        ? 'The half-nuts may close anywhere.'
        : `Close after every ${s} threads of the screw, ${printShort(s * toNumber(screw), 4)} in, and nowhere between.${use && dial ? ` On the dial: ${lineWords(use, dial)}.` : ''}`,
  };
}

const leadFigure = ({ thread, starts }: ScrewCuttingAsked, L: Ratio): Figure =>
  figure(
    'Lead to set the wheels for',
    'L',
    { number: toNumber(L) * (thread.pi === 1 ? Math.PI : 1), unit: 'in', places: 7 },
    thread.pi === 1 ? 'π × p × n' : 'p × n',
    [
      one('p', thread.pi === 1 ? 'pitch as a part of π, inches' : 'pitch, inches', { ratio: thread.size }),
      one('n', 'starts', { count: starts }),
    ],
  );

function startFigures({ thread, starts, screw, driver }: ScrewCuttingAsked, L: Ratio) {
  const holdsPi = thread.pi === 1;
  const shift = toNumber(startPitch(L, starts)) * (holdsPi ? Math.PI : 1);
  const step = driver === null ? null : driverStep(driver, starts);
  const nuts = holdsPi ? null : startShift(screw, L, starts);
  return {
    shift: figure(
      'Shift the top slide from start to start',
      'p',
      { number: shift, unit: 'in', places: 5 },
      holdsPi ? 'π × L ÷ n' : 'L ÷ n',
      [one('L', holdsPi ? 'lead as a part of π, inches' : 'lead', { ratio: L }), one('n', 'starts', { count: starts })],
    ),
    ...(driver === null
      ? {}
      : {
          driver: figure(
            'Or step the first driver on by',
            'k',
            step === null ? { words: `not by the ${driver}: take one divisible by ${starts}` } : { count: step, unit: 'teeth' },
          ),
        }),
    halfNut: figure(
      'Or open the half-nuts and move by',
      'j',
      nuts === null ? { words: 'no number of whole threads does it' } : { count: nuts, unit: 'threads of the screw' },
    ),
  };
}

function cautionsFor(s: number, use: DialUse | null, screw: Ratio): Caution[] {
  const away: Caution = {
    name: 'Run-out',
    says: 'Tool back before reversing, a groove to run out in, lash taken up the same way each time.',
    weight: 'note',
  };
  if (s === 1) return [away];
  const far = s * toNumber(screw) > 6 || use?.use === 'count turns';
  return far
    ? [
        {
          name: 'Half-nuts',
          says: `The place to close comes only every ${printNumber(s * toNumber(screw), 2)} in: leave the half-nuts closed and reverse the lathe.`,
          weight: 'beware',
          about: 'match',
        },
        away,
      ]
    : [away];
}

/** A pitch that holds π never comes back to the screw's own threads. */
const neverAgain = (asked: ScrewCuttingAsked, L: Ratio): Answer<ScrewCuttingKey> => ({
  figures: {
    lead: leadFigure(asked, L),
    match: figure(
      'Threads of the screw until the tool falls in again',
      's',
      { words: 'never' },
      '',
      [],
      'derived: π is no ratio of whole numbers',
    ),
    ...(asked.starts > 1 ? startFigures(asked, L) : {}),
  } as Answer<ScrewCuttingKey>['figures'],
  cautions: [
    {
      name: 'Half-nuts',
      says: 'Leave the half-nuts closed from the first cut to the last, and reverse the lathe.',
      weight: 'beware',
      about: 'match',
    },
  ],
  says: 'A pitch that holds π never falls in with the screw again: keep the half-nuts closed.',
});
