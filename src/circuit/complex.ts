/** A complex number. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export function complex(re: number, im = 0): Complex {
  return { re, im };
}

export function add(a: Complex, b: Complex): Complex {
  return { re: a.re + b.re, im: a.im + b.im };
}

export function multiply(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re };
}

/** The quotient, scaled by the divisor's larger part so that no square overflows (Smith's method). */
export function divide(a: Complex, b: Complex): Complex {
  if (Math.abs(b.re) >= Math.abs(b.im)) {
    const ratio = b.im / b.re;
    const scale = b.re + b.im * ratio;
    return { re: (a.re + a.im * ratio) / scale, im: (a.im - a.re * ratio) / scale };
  }
  const ratio = b.re / b.im;
  const scale = b.re * ratio + b.im;
  return { re: (a.re * ratio + a.im) / scale, im: (a.im * ratio - a.re) / scale };
}
