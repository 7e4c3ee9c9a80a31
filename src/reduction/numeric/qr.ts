/**
 * Linear least squares by Householder QR: finds the x that makes |A x - b| least, and writes it into `x`. A stands
 * column by column, `rows` values each; A and b are overwritten. A column that depends on the columns before it has 0
 * in x.
 *
 * The indices stay within A and b by their lengths, which the compiler cannot see: hence each `!`.
 */
export function solveQr(
  A: Float64Array,
  rows: number,
  cols: number,
  b: Float64Array,
  x: Float64Array = new Float64Array(cols),
): Float64Array {
  for (let j = 0; j < cols; j++) {
    const from = j * rows;
    let below = 0;
    for (let i = j + 1; i < rows; i++) below += A[from + i]! * A[from + i]!;
    const head = A[from + j]!;
    const norm = Math.sqrt(head * head + below);
    if (norm === 0) continue;
    const diagonal = head > 0 ? -norm : norm;
    A[from + j] = head - diagonal;
    const vv = A[from + j]! ** 2 + below;
    for (let k = j + 1; k < cols; k++) reflect(A, vv, A, k * rows, j, rows);
    reflect(A, vv, b, 0, j, rows);
    A[from + j] = diagonal;
  }
  for (let j = cols - 1; j >= 0; j--) {
    let sum = b[j]!;
    for (let k = j + 1; k < cols; k++) sum -= A[k * rows + j]! * x[k]!;
    const diagonal = A[j * rows + j]!;
    x[j] = diagonal === 0 ? 0 : sum / diagonal;
  }
  return x;
}

/**
 * Reflects the column of `target` at `offset`, from row `top` down, by the vector v that stands in the column of A with
 * the number `top`; `vv` is v times v.
 */
function reflect(A: Float64Array, vv: number, target: Float64Array, offset: number, top: number, rows: number): void {
  const from = top * rows;
  let dot = 0;
  for (let i = top; i < rows; i++) dot += A[from + i]! * target[offset + i]!;
  const factor = (2 * dot) / vv;
  for (let i = top; i < rows; i++) target[offset + i]! -= factor * A[from + i]!;
}
