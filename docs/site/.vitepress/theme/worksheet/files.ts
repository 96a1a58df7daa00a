import type { Generator } from 'esu-limits/procedure';

/** Gives a text to the person as a file. It goes nowhere else. */
export function download(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/** Prints a document of its own, in a frame that runs no script. */
export function printHtml(html: string): void {
  const frame = document.createElement('iframe');
  frame.setAttribute('sandbox', 'allow-same-origin allow-modals');
  frame.setAttribute('aria-hidden', 'true');
  frame.title = 'Print';
  frame.className = 'ws-print';
  frame.srcdoc = html;
  document.querySelector('iframe.ws-print')?.remove();
  frame.addEventListener('load', () => {
    frame.contentWindow?.focus();
    frame.contentWindow?.print();
  });
  document.body.append(frame);
}

/** A file name that every system takes. */
export function fileName({ identification, name }: Generator, date: string): string {
  const parts = ['record', identification ?? name, date].map((part) =>
    part
      .normalize('NFKD')
      .replace(/[^A-Za-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 40),
  );
  return parts.filter((part) => part !== '').join('-');
}
