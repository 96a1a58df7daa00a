/** A path as text: `outputs[0].curves[1].points[3].power`; names that are no plain words stand in quotes. */
export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const part of path) {
    if (typeof part === 'number') text += `[${part}]`;
    else if (/^[\w$-]{1,80}$/.test(String(part))) text += text === '' ? String(part) : `.${String(part)}`;
    else text += `[${JSON.stringify(String(part).slice(0, 80))}]`;
  }
  return text;
}
