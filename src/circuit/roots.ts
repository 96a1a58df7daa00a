/** Below this a number loses digits, and above its square root so may a product. */
const smallestFullNumber = 2.2250738585072014e-308;

function isFull(value: number): boolean {
  return value >= smallestFullNumber && value < Number.POSITIVE_INFINITY;
}

/** √(a·b) of positive numbers: survives a product that leaves the range of numbers. */
export function rootOfProduct(a: number, b: number): number {
  const product = a * b;
  return isFull(product) ? Math.sqrt(product) : Math.sqrt(a) * Math.sqrt(b);
}

/** √(a/b) of positive numbers: survives a quotient that leaves the range of numbers. */
export function rootOfRatio(a: number, b: number): number {
  const ratio = a / b;
  return isFull(ratio) ? Math.sqrt(ratio) : Math.sqrt(a) / Math.sqrt(b);
}
