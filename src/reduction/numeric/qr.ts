/** Linear least squares by Householder QR: the x that makes |A x - b| least. A (rows of equal length) and b are overwritten. */
export function solveQr(A: number[][], b: number[]): number[] {
  const rows = A.length;
  const cols = A[0].length;
  for (let j = 0; j < cols; j++) {
    let norm = 0;
    for (let i = j; i < rows; i++) norm = Math.hypot(norm, A[i][j]);
    if (norm === 0) continue;
    if (A[j][j] > 0) norm = -norm;
    const pivot = A[j][j] - norm;
    // v = (pivot, A[j+1..][j]); H = I - 2 v v' / v'v
    let vv = pivot * pivot;
    for (let i = j + 1; i < rows; i++) vv += A[i][j] * A[i][j];
    const reflect = (get: (i: number) => number, set: (i: number, value: number) => void) => {
      let dot = pivot * get(j);
      for (let i = j + 1; i < rows; i++) dot += A[i][j] * get(i);
      const factor = (2 * dot) / vv;
      set(j, get(j) - factor * pivot);
      for (let i = j + 1; i < rows; i++) set(i, get(i) - factor * A[i][j]);
    };
    for (let k = j + 1; k < cols; k++)
      reflect(
        (i) => A[i][k],
        (i, value) => (A[i][k] = value),
      );
    reflect(
      (i) => b[i],
      (i, value) => (b[i] = value),
    );
    A[j][j] = norm;
  }
  const x = new Array<number>(cols).fill(0);
  for (let j = cols - 1; j >= 0; j--) {
    let sum = b[j];
    for (let k = j + 1; k < cols; k++) sum -= A[j][k] * x[k];
    x[j] = A[j][j] === 0 ? 0 : sum / A[j][j];
  }
  return x;
}
