/** Text in which a number stays on the line of its unit: the blank between them does not break. */
export function bindUnits(text: string): string {
  return text.replace(/(\d) (?=(?:[µmk]?[WAVs]|[mkM]?(?:Ω|ohm)|[kM]?Hz|min|h|%)(?![\p{L}\d]))/gu, '$1\u00a0');
}
