import { DomainError } from '../figure/domain-error.ts';
import type { Answer, Caution, Figure, Given } from '../figure/figure.ts';
import { type ContactAsked, fouls, heldFigure, hobbedLess, overlap, radii, reachOf, T109, weak } from './contact-figures.ts';
import { contactRatioOnRack, contactRatioWithRack, hobbedContactWithRack } from './contact-ratio.formulas.ts';
import { atOf, baseOf, type Flanks, mtOf, pitchOf, tipOf } from './flanks.formulas.ts';
import { checkedFlanks } from './parallel.ts';
import { type Terms, termsOf, toldLength, toldNumber, workedLength } from './parallel-terms.ts';
import { hobbedFormDiameter } from './profile-rack.formulas.ts';

type Hobbed = { readonly figures: Record<string, Figure>; readonly cautions: readonly Caution[] };

/** What a hob's undercut takes off the contact: only said where it takes any. */
function hobbed(flanks: Flanks, terms: Terms, numbers: readonly Given[], held: number): Hobbed {
  const form = hobbedFormDiameter(flanks);
  if (form === null)
    return {
      figures: {},
      cautions: [{ name: 'No flank', says: 'A hob or rack leaves no involute on the wheel.', weight: 'danger', about: 'contactRatio' }],
    };
  const stands = flanks.A - flanks.v;
  const ratio = hobbedContactWithRack(radii(flanks, tipOf(flanks)), stands, form / 2, atOf(flanks), mtOf(flanks));
  if (!(ratio < held - 5e-5)) return { figures: {}, cautions: [] };
  const left = 'D ÷ 2 × sin(at) − √(max(0, (Df ÷ 2)^2 − (Db ÷ 2)^2))';
  const said = {
    name: 'Contact ratio if it is hobbed',
    symbol: 'eh',
    formula: `max(0, ${reachOf('Do', 'Db')} − D ÷ 2 × sin(at) + min(ha ÷ sin(at), ${left})) ÷ (${terms.across('π')} × cos(at))`,
    source: 'derived: no flank below where the hob’s own rack begins it',
  };
  const given = [...numbers, workedLength('Df', 'involute of the wheel begins', form, flanks.unit)];
  return { figures: { hobbedContact: toldNumber(flanks.unit, said, ratio, given, 4) }, cautions: hobbedLess(ratio) };
}

/** A rack: its standard pitch line rolls on the wheel's standard pitch circle, its shift is the wheel's turned about. */
export function rack(asked: ContactAsked): Answer {
  if (asked.centre !== undefined)
    throw new DomainError({
      given: 'A centre distance with a rack.',
      limit: 'A rack has no centre.',
      tryThis: 'Leave it empty.',
      about: ['centre'],
    });
  const flanks = checkedFlanks({ ...asked.gear, ring: false, shift: asked.shift ?? 0 });
  const terms = termsOf({ ...asked.gear, shift: asked.shift ?? 0 }, flanks);
  const stands = flanks.A - flanks.v;
  const held = contactRatioWithRack(radii(flanks, tipOf(flanks)), stands, atOf(flanks), mtOf(flanks));
  const ratio = contactRatioOnRack(radii(flanks, tipOf(flanks)), stands, atOf(flanks), mtOf(flanks));
  const numbers = [
    ...terms.given,
    workedLength('Do', 'outside of the wheel', tipOf(flanks), flanks.unit),
    workedLength('Db', 'base diameter', baseOf(flanks), flanks.unit),
    workedLength('D', 'pitch diameter', pitchOf(flanks), flanks.unit),
    workedLength('ha', 'rack above the pitch circle’s tangent', stands, flanks.unit),
  ];
  const path = `${reachOf('Do', 'Db')} − D ÷ 2 × sin(at) + ha ÷ sin(at)`;
  const bounded = `${reachOf('Do', 'Db')} − D ÷ 2 × sin(at) + min(ha ÷ sin(at), D ÷ 2 × sin(at))`;
  const said = {
    name: 'Transverse contact ratio',
    symbol: 'ea',
    formula: `max(0, ${path}) ÷ (${terms.across('π')} × cos(at))`,
    source: T109,
  };
  const mount = {
    name: 'Wheel’s middle to the rack’s pitch line',
    symbol: 'C',
    formula: `D ÷ 2${terms.plusX === '' ? '' : ` + ${terms.of('X')}`}`,
    source: 'SDP/SI, Elements of Metric Gear Technology, rack and spur gear (value from memory)',
  };
  const cut = hobbed(flanks, terms, numbers, held);
  const foul = stands > (pitchOf(flanks) / 2) * Math.sin(atOf(flanks)) ** 2 + 1e-9;
  return {
    figures: {
      contactRatio: toldNumber(flanks.unit, said, ratio, numbers, 4),
      ...heldFigure(flanks.unit, ratio, held, bounded, `${terms.across('π')} × cos(at)`, numbers),
      ...overlap(flanks, asked.face, ratio, numbers),
      ...cut.figures,
      mounting: toldLength(flanks.unit, mount, pitchOf(flanks) / 2 + flanks.v, numbers),
    },
    cautions: [...weak(held), ...(foul ? [fouls('rack', 'contactRatio')] : []), ...cut.cautions],
  };
}
