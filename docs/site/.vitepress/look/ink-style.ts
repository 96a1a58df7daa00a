import { palette } from '../../../../src/report/picture/palette.js';

/** The colours of the library's own sheets and pictures as custom properties, for a light and a dark screen. */
export function inkStyle(): string {
  const properties = (side: 'light' | 'dark') =>
    Object.entries(palette)
      .map(([name, colours]) => `--${name}:${colours[side]}`)
      .join(';');
  return `:root{${properties('light')}}.dark{${properties('dark')}}`;
}
