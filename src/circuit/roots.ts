/** 2⁻⁵¹¹, the root of the smallest number with all its digits: below it the number under the root has lost some. */
const smallestFullRoot = 2 ** -511;

function isFullRoot(root: number): boolean {
  return root >= smallestFullRoot && root < Number.POSITIVE_INFINITY;
}

/** √(a·b) of positive numbers: survives a product that leaves the range of numbers. */
export function rootOfProduct(a: number, b: number): number {
  const root = Math.sqrt(a * b);
  return isFullRoot(root) ? root : Math.sqrt(a) * Math.sqrt(b);
}

/** √(a/b) of positive numbers: survives a quotient that leaves the range of numbers. */
export function rootOfRatio(a: number, b: number): number {
  const root = Math.sqrt(a / b);
  return isFullRoot(root) ? root : Math.sqrt(a) / Math.sqrt(b);
}
