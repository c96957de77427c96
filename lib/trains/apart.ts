const BITS = 10;
const PLACE = (1 << BITS) - 1;

/** How many of the wheels of one side are of the number at this place. */
function timesIn(made: number, wheels: number, place: number): number {
  let count = 0;
  for (let k = 0; k < wheels; k++) if (((made >> (BITS * k)) & PLACE) === place) count++;
  return count;
}

/** Whether both sides can be set up at once: no number is asked for more often than wheels of it lie there. */
export function apart(one: number, other: number, wheels: number, there: Int32Array): boolean {
  for (let k = 0; k < wheels; k++) {
    const place = (one >> (BITS * k)) & PLACE;
    const wanted = timesIn(other, wheels, place);
    if (wanted > 0 && wanted + timesIn(one, wheels, place) > (there[place] as number)) return false;
  }
  return true;
}
