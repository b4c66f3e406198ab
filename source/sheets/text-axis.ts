/** A ruler with its numbers under it, in plain characters: `ticks` are columns from 0 and what stands there. */
export const textAxis = (
  ticks: readonly (readonly [column: number, number: string])[],
  width: number,
): readonly [ruler: string, numbers: string] => {
  const ruler = Array.from({ length: width }, () => '-');
  const numbers = Array.from({ length: width }, () => ' ');
  for (const [column, number] of ticks) {
    ruler[column] = '+';
    // The last number ends with the ruler.
    const first = Math.min(column, width - number.length);
    [...number].forEach((digit, index) => {
      numbers[first + index] = digit;
    });
  }
  return [ruler.join(''), numbers.join('').trimEnd()];
};
