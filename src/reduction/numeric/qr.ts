/**
 * Linear least squares by Householder QR: the x that makes |A x - b| least. A is held column by column, `rows` values
 * each; A and b are overwritten. A column that depends on those before it has 0 in x.
 */
export function solveQr(A: Float64Array, rows: number, cols: number, b: Float64Array): Float64Array {
  const reflect = (pivot: number, vv: number, from: number, column: Float64Array, offset: number, j: number) => {
    let dot = pivot * column[offset + j];
    for (let i = j + 1; i < rows; i++) dot += A[from + i] * column[offset + i];
    const factor = (2 * dot) / vv;
    column[offset + j] -= factor * pivot;
    for (let i = j + 1; i < rows; i++) column[offset + i] -= factor * A[from + i];
  };
  for (let j = 0; j < cols; j++) {
    const from = j * rows;
    let below = 0;
    for (let i = j + 1; i < rows; i++) below += A[from + i] * A[from + i];
    const head = A[from + j];
    const norm = Math.sqrt(head * head + below);
    if (norm === 0) continue;
    const diagonal = head > 0 ? -norm : norm;
    const pivot = head - diagonal;
    const vv = pivot * pivot + below;
    for (let k = j + 1; k < cols; k++) reflect(pivot, vv, from, A, k * rows, j);
    reflect(pivot, vv, from, b, 0, j);
    A[from + j] = diagonal;
  }
  const x = new Float64Array(cols);
  for (let j = cols - 1; j >= 0; j--) {
    let sum = b[j];
    for (let k = j + 1; k < cols; k++) sum -= A[k * rows + j] * x[k];
    const diagonal = A[j * rows + j];
    x[j] = diagonal === 0 ? 0 : sum / diagonal;
  }
  return x;
}
