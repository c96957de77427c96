/** One wheel as the standard wants it, in mm: d reference diameter, mn normal module, b face. */
export type Measured = { readonly d: number; readonly mn: number; readonly b: number };

const STEP = Math.SQRT2;
const BASE_CLASS = 5;
/** Tolerances grow by √2 with each class from class 5. */
const inClass = (base: number, grade: number): number => base * STEP ** (grade - BASE_CLASS);

/**
 * Tolerances of ISO 1328-1:2013, section 5.3, in micrometres, by flank tolerance class (1 to 11). Formulas: value from memory.
 * single pitch fpT = 0.001 d + 0.4 mn + 5; example: d 120, mn 3, class 7: 12.6.
 */
export const singlePitch = ({ d, mn }: Measured, grade: number): number => inClass(0.001 * d + 0.4 * mn + 5, grade);
/** Cumulative pitch FpT = 0.002 d + 0.55 √d + 0.7 mn + 12. Example: d 120, mn 3, class 7: 40.7. */
export const cumulativePitch = ({ d, mn }: Measured, grade: number): number =>
  inClass(0.002 * d + 0.55 * Math.sqrt(d) + 0.7 * mn + 12, grade);
/** Profile slope fHaT = 0.4 mn + 0.001 d + 4. */
const profileSlope = ({ d, mn }: Measured): number => 0.4 * mn + 0.001 * d + 4;
/** Profile form ffaT = 0.55 mn + 5. */
const profileForm = ({ mn }: Measured): number => 0.55 * mn + 5;
/** Total profile FaT = √(fHaT² + ffaT²). */
export const totalProfile = (one: Measured, grade: number): number => inClass(Math.hypot(profileSlope(one), profileForm(one)), grade);
/** Helix slope fHbT = 0.05 √d + 0.35 √b + 4; helix form ffbT = 0.07 √d + 0.45 √b + 4; total FbT = √(fHbT² + ffbT²). */
export const totalHelix = ({ d, b }: Measured, grade: number): number =>
  inClass(Math.hypot(0.05 * Math.sqrt(d) + 0.35 * Math.sqrt(b) + 4, 0.07 * Math.sqrt(d) + 0.45 * Math.sqrt(b) + 4), grade);
/** Run-out FrT = 0.9 FpT. */
export const runOut = (one: Measured, grade: number): number => 0.9 * cumulativePitch(one, grade);

/** The best class whose tolerance holds a reading, 1 to 11; null beyond 11. Example: 12 µm of single pitch, d 120, mn 3: 7. */
export function classOf(reading: number, tolerance: (grade: number) => number): number | null {
  for (let grade = 1; grade <= 11; grade++) if (reading <= tolerance(grade) + 1e-9) return grade;
  return null;
}
