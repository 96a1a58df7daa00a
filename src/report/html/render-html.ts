import { escapeHtml } from '../escape/escape-html.js';
import { drawSweep } from '../picture/draw-sweep.js';
import { loadCurvePicture } from '../picture/load-curve-picture.js';
import { monitorTracePicture } from '../picture/monitor-trace-picture.js';
import type { Block, FormLine, Section, Sheet } from '../sheet/sheet.js';
import { styleOf } from './style.js';
import { tableHtml } from './table-html.js';
import { workingHtml } from './working-html.js';

/** The document runs nothing and fetches nothing; this holds even if a text should slip through. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

/** A sheet as one HTML document: inline style and pictures, no script, no request. */
export function renderHtml(sheet: Sheet): string {
  const title = escapeHtml(`${sheet.title} — ${sheet.subtitle}`);
  const blocks = sheet.sections.flatMap((section) => section.blocks);
  const anchors = new Set(blocks.flatMap((block) => (block.kind === 'working' ? [block.working.id] : [])));
  return [
    '<!DOCTYPE html>',
    '<html lang="en">',
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${escapeHtml(policy)}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${title}</title>`,
    `<style>${styleOf(sheet.foot)}</style>`,
    '</head>',
    `<body class="${sheet.kind}">`,
    '<header>',
    `<h1>${escapeHtml(sheet.title)}</h1>`,
    `<p class="subtitle">${escapeHtml(sheet.subtitle)}</p>`,
    navigation(sheet),
    '</header>',
    '<main>',
    ...sheet.sections.map((section) => sectionHtml(section, anchors)),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function navigation(sheet: Sheet): string {
  const links = sheet.sections.flatMap(({ id, heading }) =>
    heading === undefined ? [] : [`<li><a href="#${id}">${escapeHtml(heading)}</a></li>`],
  );
  return `<nav aria-label="Sections"><ul>${links.join('')}</ul></nav>`;
}

function sectionHtml(section: Section, anchors: ReadonlySet<string>): string {
  const heading = section.heading === undefined ? '' : `<h2>${escapeHtml(section.heading)}</h2>`;
  const attributes = `id="${section.id}"${section.newPage === true ? ' class="new-page"' : ''}`;
  return `<section ${attributes}>${heading}\n${section.blocks.map((block) => blockHtml(block, section, anchors)).join('\n')}\n</section>`;
}

function blockHtml(block: Block, section: Section, anchors: ReadonlySet<string>): string {
  switch (block.kind) {
    case 'paragraph': {
      const tone = block.tone ?? 'plain';
      return `<p${tone === 'plain' ? '' : ` class="${tone}"`}>${escapeHtml(block.text)}</p>`;
    }
    case 'list': {
      const items = block.items.map((item) => `<li>${escapeHtml(item)}</li>`);
      return `<ul class="${block.tone}">${items.join('')}</ul>`;
    }
    case 'facts': {
      const pairs = block.facts.map(({ name, value }) => `<dt>${escapeHtml(name)}</dt><dd>${escapeHtml(value)}</dd>`);
      return `<dl class="facts">${pairs.join('')}</dl>`;
    }
    case 'table':
      return tableHtml(block.table, anchors);
    case 'lines':
      return `<div class="lines">${block.lines.map(lineHtml).join('')}</div>`;
    case 'pictures': {
      const figures = block.pictures.map(
        (picture, i) => `<figure>${loadCurvePicture(picture, { id: `${section.id}-${i + 1}` })}</figure>`,
      );
      return `<div class="pictures">${figures.join('\n')}</div>`;
    }
    case 'sweeps':
      return `<div class="pictures">${block.pictures.map((picture) => `<figure>${drawSweep(picture)}</figure>`).join('\n')}</div>`;
    case 'traces': {
      const start = `${section.id}-${section.blocks.indexOf(block)}`;
      const figures = block.pictures.map(
        (picture, i) => `<figure>${monitorTracePicture(picture, { id: `${start}-${i + 1}` })}</figure>`,
      );
      return `<div class="traces" role="group" aria-label="Pictures of traces" tabindex="0">${figures.join('\n')}</div>`;
    }
    case 'working':
      return workingHtml(block.working);
  }
}

function lineHtml({ name, value }: FormLine): string {
  const room = value === undefined ? '<span class="room"></span>' : `<span>${escapeHtml(value)}</span>`;
  return `<p><span class="name">${escapeHtml(name)}</span>${room}</p>`;
}
