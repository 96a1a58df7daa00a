/** A colour of the sheets on paper and on a dark screen. */
interface Ink {
  readonly light: string;
  readonly dark: string;
}

/**
 * The colours of sheets and pictures. Blue and vermilion stay apart for every common kind of colour vision,
 * and differ in lightness on a grey print; no verdict is told by colour alone.
 */
export const palette = {
  paper: { light: '#ffffff', dark: '#15191e' },
  raised: { light: '#f3f5f4', dark: '#1e242b' },
  ink: { light: '#1c2329', dark: '#e4e8ea' },
  soft: { light: '#55606a', dark: '#a5b0b8' },
  rule: { light: '#b9c2c4', dark: '#47525b' },
  grid: { light: '#e2e7e7', dark: '#2b333b' },
  accent: { light: '#1f5560', dark: '#8cc4cb' },
  band: { light: '#d5e5e3', dark: '#24434a' },
  pass: { light: '#1d5b8f', dark: '#86bdf0' },
  fail: { light: '#ad3a12', dark: '#ff9d78' },
  open: { light: '#5c5668', dark: '#c0b7d0' },
  caution: { light: '#fbf2dc', dark: '#38301c' },
  cautionEdge: { light: '#a8770f', dark: '#dbb257' },
} as const satisfies Record<string, Ink>;

/** Name of a colour. */
export type InkName = keyof typeof palette;

/** A colour for a style: the custom property of the sheet, or the paper's colour where a picture stands alone. */
export function ink(name: InkName): string {
  return `var(--${name},${palette[name].light})`;
}
